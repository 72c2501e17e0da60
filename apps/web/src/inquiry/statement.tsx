'use client';

import { fieldId } from './fields';
import { useField } from './use-field';

/** The inquiry in the client's own words: a mail, pasted. */
export function Statement() {
  const field = useField('statement');
  return (
    <div>
      <label htmlFor={fieldId('statement')} className="lab mb-1 block">
        Original wording
      </label>
      <textarea
        id={fieldId('statement')}
        className="field"
        rows={3}
        placeholder="What was written, kept with the inquiry"
        {...field}
      />
    </div>
  );
}
