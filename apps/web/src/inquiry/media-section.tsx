'use client';

import { useFieldArray } from 'react-hook-form';
import { ChoiceField, SaidField, TextField } from './fields';
import type { FormValues } from './form-values';
import { Section } from './section';

const roles = ['solvent', 'reactant', 'product', 'gas', 'catalyst', 'cleaning', 'inert gas'].map(
  (role) => [role, role] as const,
);

/** What the vessel holds. */
export function MediaSection() {
  const { fields, append, remove } = useFieldArray<FormValues, 'process.media'>({ name: 'process.media' });
  return (
    <Section title="Media">
      {fields.length === 0 && (
        <p className="text-ink2">
          None named yet. Corrosion, vapour pressure and the hazardous area depend on them.
        </p>
      )}
      {fields.map((field, i) => (
        <div
          key={field.id}
          className="grid grid-cols-2 items-start gap-3 border-t border-hair pt-3 first:border-0 first:pt-0 md:grid-cols-[2fr_1.2fr_1fr_1.2fr_.9fr_auto]"
        >
          <TextField
            name={`process.media.${i}.substance`}
            label="Substance"
            placeholder="methanol or 67-56-1"
          />
          <ChoiceField name={`process.media.${i}.role`} label="Role" options={roles} />
          <TextField
            name={`process.media.${i}.massFraction`}
            label="Share by mass"
            kind="ratio"
            placeholder="20 %"
          />
          <TextField name={`process.media.${i}.solvent`} label="Dissolved in" placeholder="water" />
          <SaidField name={`process.media.${i}.dry`} label="Free of water" />
          <button
            type="button"
            className="btn btn-q md:mt-[18px]"
            aria-label={`Remove medium ${String(i + 1)}`}
            onClick={() => remove(i)}
          >
            Remove
          </button>
        </div>
      ))}
      <button
        type="button"
        className="btn justify-self-start"
        onClick={() => append({ role: fields.length === 0 ? 'solvent' : 'reactant' })}
      >
        Add a medium
      </button>
    </Section>
  );
}
