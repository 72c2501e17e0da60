'use client';

import { useState } from 'react';
import { StatusMark } from '../look/status-mark';

/** Shown before the rest is folded away. */
const shownAtFirst = 2;

/** What calls for care whatever the numbers say. */
export function Cautions({ texts }: { readonly texts: readonly string[] }) {
  const [all, setAll] = useState(false);
  if (texts.length === 0) return null;
  const shown = all ? texts : texts.slice(0, shownAtFirst);
  return (
    <section className="sec">
      <div className="sec-head">
        <h2>
          <StatusMark status="met with caution" label="caution" /> Take care
        </h2>
        <span className="lab">{texts.length}</span>
      </div>
      <ul>
        {shown.map((text) => (
          <li key={text} className="row say-sm py-1.5 first-letter:uppercase">
            {text}
          </li>
        ))}
      </ul>
      {texts.length > shownAtFirst && (
        <button
          type="button"
          className="btn-link row w-full"
          aria-expanded={all}
          onClick={() => setAll(!all)}
        >
          {all ? 'Fewer' : `${String(texts.length - shownAtFirst)} more`}
        </button>
      )}
    </section>
  );
}
