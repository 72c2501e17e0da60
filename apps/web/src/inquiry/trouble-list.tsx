'use client';

import { useFormContext } from 'react-hook-form';
import { StatusMark } from '../look/status-mark';
import { fieldId } from './fields';
import type { FormValues } from './form-values';
import type { FieldTrouble } from './read-form';

const nameInWords = (name: string): string =>
  name
    .split('.')
    .filter((part) => part !== 'process' && part !== 'requirements')
    .map((part) =>
      /^\d+$/.test(part) ? String(Number(part) + 1) : part.replace(/([A-Z])/g, ' $1').toLowerCase(),
    )
    .join(', ');

/** All fields that were refused, each a way to its field. */
export function TroubleList({ troubles }: { readonly troubles: readonly FieldTrouble[] }) {
  const { setFocus } = useFormContext<FormValues>();
  if (troubles.length === 0) return null;
  return (
    <section className="sec" role="alert">
      <h2>
        <StatusMark status="not met" label="refused" />{' '}
        {troubles.length === 1
          ? 'One field cannot be used'
          : `${String(troubles.length)} fields cannot be used`}
      </h2>
      <ul className="mt-1">
        {troubles.map(({ name, message }) => (
          <li key={name} className="row py-1.5">
            <button
              type="button"
              className="btn-link font-medium first-letter:uppercase"
              onClick={() => {
                document.getElementById(fieldId(name))?.closest('details')?.setAttribute('open', '');
                setFocus(name as Parameters<typeof setFocus>[0]);
              }}
            >
              {name === '' ? 'The inquiry' : nameInWords(name)}
            </button>
            <p>{message}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
