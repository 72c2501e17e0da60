import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { calculationErrorCodes } from '@flangewise/model';
import { evaluate, evaluateWithEvidence } from './calculation.js';
import { calculations } from './registry.js';

interface FieldSchema {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly FieldSchema[];
  readonly items?: FieldSchema;
  readonly minItems?: number;
  readonly format?: string;
  readonly properties?: Readonly<Record<string, FieldSchema>>;
  readonly required?: readonly string[];
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly exclusiveMaximum?: number;
}

/** Texts that name something: real ones, and one that nobody knows. */
const names = fc.constantFrom(
  'water',
  'methanol',
  'toluene',
  'hydrogen',
  'nitrogen',
  'carbon dioxide',
  '7664-93-9',
  '1.4404',
  'alloy C-276',
  'titanium grade 2',
  'PTFE',
  'sodium chloride',
  'unobtainium',
);

const numbers = (field: FieldSchema): fc.Arbitrary<number> => {
  const low = field.minimum ?? field.exclusiveMinimum ?? -1e300;
  const high = field.maximum ?? field.exclusiveMaximum ?? 1e300;
  if (field.type === 'integer') return fc.integer({ min: Math.max(low, -1000), max: Math.min(high, 1000) });
  const within = (value: number): boolean => value >= low && value <= high;
  const inside = fc.double({ min: low, max: high, noNaN: true });
  const exponent = fc.double({ min: -12, max: 12, noNaN: true }).map((power) => 10 ** power);
  const usual = [low, high, 0.001, 0.1, 1, 300, 1e3, 1e5, 1e6, 1e8].filter(within);
  return fc.oneof(
    exponent.map((value) => (within(value) ? value : (usual[0] ?? low))),
    fc.constantFrom(...usual),
    inside,
  );
};

/** Values of a field: both ends of its range, the size of real parts, and extremes; lists of up to four. */
const valuesOf = (field: FieldSchema): fc.Arbitrary<unknown> => {
  if (field.const !== undefined) return fc.constant(field.const);
  if (field.enum !== undefined) return fc.constantFrom(...field.enum);
  if (field.anyOf !== undefined) return fc.oneof(...field.anyOf.map(valuesOf));
  switch (field.type) {
    case 'boolean':
      return fc.boolean();
    case 'string':
      return field.format === 'date' ? fc.constantFrom('2026-11-01', '2027-01-20') : names;
    case 'array': {
      const minLength = field.minItems ?? 0;
      return fc.array(valuesOf(field.items ?? {}), { minLength, maxLength: minLength + 3 });
    }
    case 'object':
      return recordOf(field);
    default:
      return numbers(field);
  }
};

const recordOf = ({ properties = {}, required = [] }: FieldSchema): fc.Arbitrary<Record<string, unknown>> =>
  fc.record(Object.fromEntries(Object.entries(properties).map(([name, field]) => [name, valuesOf(field)])), {
    requiredKeys: [...required],
  });

const inputsOf = (schema: z.ZodObject): fc.Arbitrary<Record<string, unknown>> =>
  recordOf(z.toJSONSchema(schema, { io: 'input', reused: 'inline' }) as FieldSchema);

describe.each(calculations.map((subject) => [subject.id, subject] as const))('%s', (_id, subject) => {
  it('answers every input with finite numbers or a coded error, and shows its steps alike', () => {
    fc.assert(
      fc.property(inputsOf(subject.inputs), (inputs) => {
        const outcome = evaluate(subject, inputs);
        const evidence = evaluateWithEvidence(subject, inputs);
        expect(evidence.ok).toBe(outcome.ok);
        if (!outcome.ok) {
          expect(calculationErrorCodes).toContain(outcome.error.code);
          return;
        }
        expect(evidence.ok && evidence.value.outputs).toEqual(outcome.value);
        expect(evidence.ok && evidence.value.steps.length).toBeGreaterThan(0);
        expect(subject.outputs.safeParse(outcome.value).success).toBe(true);
      }),
      { numRuns: 150 },
    );
  });
});
