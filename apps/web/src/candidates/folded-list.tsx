'use client';

import { type ReactNode, useState } from 'react';

export interface FoldedListProps {
  readonly title: string;
  readonly id?: string;
  readonly items: readonly { readonly key: string; readonly body: ReactNode }[];
  /** Shown before the rest is folded away. */
  readonly atFirst: number;
}

/** A section whose list may be long: the first few, the rest on request. */
export function FoldedList({ title, id, items, atFirst }: FoldedListProps) {
  const [all, setAll] = useState(false);
  if (items.length === 0) return null;
  const shown = all ? items : items.slice(0, atFirst);
  return (
    <section className="sec scroll-mt-4" id={id}>
      <div className="sec-head">
        <h2>{title}</h2>
        <span className="lab">{items.length}</span>
      </div>
      <ul>
        {shown.map(({ key, body }) => (
          <li key={key} className="row py-1.5">
            {body}
          </li>
        ))}
      </ul>
      {items.length > atFirst && (
        <button
          type="button"
          className="btn-link row w-full"
          aria-expanded={all}
          onClick={() => setAll(!all)}
        >
          {all ? 'Fewer' : `${String(items.length - atFirst)} more`}
        </button>
      )}
    </section>
  );
}
