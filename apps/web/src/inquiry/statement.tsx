'use client';

import { useFormContext } from 'react-hook-form';
import { fieldId } from './fields';
import type { FormValues } from './form-values';

/** The inquiry in the client's own words: a mail, pasted. */
export function Statement() {
  const { register } = useFormContext<FormValues>();
  return (
    <div>
      <label htmlFor={fieldId('statement')} className="lab mb-1 block">
        As it came in
      </label>
      <textarea
        id={fieldId('statement')}
        className="field"
        rows={3}
        placeholder="Paste the mail; it stays beside what is read from it."
        {...register('statement')}
      />
    </div>
  );
}
