'use client';

import { useFieldArray, useFormContext } from 'react-hook-form';
import { ChoiceField, SpanField, TextField } from './fields';
import type { FormValues } from './form-values';
import { Row, Section } from './section';

const constructions = [
  ['', 'whatever fits'],
  ['metal', 'metal'],
  ['glass', 'glass'],
  ['lined', 'metal, lined'],
] as const;

const arrangements = [
  ['', 'not said'],
  ['alternate', 'one mounted at a time'],
  ['parallel', 'all working at once'],
] as const;

const mostSets = 8;

function SetFields({ index, several }: { readonly index: number; readonly several: boolean }) {
  const { formState } = useFormContext<FormValues>();
  const given = formState.defaultValues?.sets?.[index];
  const own = several || given?.pressure !== undefined || given?.temperature !== undefined;
  return (
    <>
      <Row>
        <TextField
          name={`sets.${index}.batchVolume`}
          label="Liquid in the vessel"
          kind="volume"
          placeholder="1.5 L"
        />
        <TextField
          name={`sets.${index}.vesselVolume`}
          label="or volume of the vessel"
          kind="volume"
          placeholder="2 L"
        />
        <TextField
          name={`sets.${index}.statedVolume`}
          label="or a volume, unclear which"
          kind="volume"
          placeholder="5 L"
        />
      </Row>
      <Row>
        <ChoiceField name={`sets.${index}.construction`} label="Vessel of" options={constructions} />
        <TextField name={`sets.${index}.material`} label="Wetted material wished for" placeholder="1.4404" />
        <TextField name={`sets.${index}.count`} label="How many at once" placeholder="1" />
      </Row>
      {own && (
        <div className="grid gap-x-8 gap-y-4 lg:grid-cols-2">
          <SpanField
            name={`sets.${index}.pressure`}
            label="Pressure of this set"
            kind="pressure"
            examples={['', '', '6 bar']}
          />
          <SpanField
            name={`sets.${index}.temperature`}
            label="Temperature of this set"
            kind="temperature"
            examples={['', '', '150 °C']}
          />
        </div>
      )}
    </>
  );
}

/** One or more vessel sets on one frame. */
export function SetsSection() {
  const { fields, append, remove } = useFieldArray<FormValues, 'sets'>({ name: 'sets' });
  const several = fields.length > 1;
  return (
    <Section title={several ? 'Vessel sets on one frame' : 'Batch and vessel'}>
      {several && (
        <Row>
          <ChoiceField name="arrangement" label="The sets are" options={arrangements} />
        </Row>
      )}
      {fields.map((field, i) => (
        <div key={field.id} className={several ? 'grid gap-3 border-t border-hair pt-3' : 'grid gap-3'}>
          {several && (
            <div className="flex items-end justify-between gap-3">
              <TextField
                name={`sets.${i}.label`}
                label={`Set ${String(i + 1)}, called`}
                placeholder="glass"
              />
              <button type="button" className="btn btn-q" onClick={() => remove(i)}>
                Remove set {i + 1}
              </button>
            </div>
          )}
          <SetFields index={i} several={several} />
        </div>
      ))}
      {fields.length < mostSets && (
        <button type="button" className="btn justify-self-start" onClick={() => append({})}>
          Add a vessel set
        </button>
      )}
    </Section>
  );
}
