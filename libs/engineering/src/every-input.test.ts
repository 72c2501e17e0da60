import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { calculationErrorCodes } from '@flangewise/model';
import { evaluate, evaluateWithEvidence } from './calculation.js';
import { closureCalculations } from './closure/closure-calculations.js';
import { couplingCalculations } from './coupling/coupling-calculations.js';
import { geometryCalculations } from './geometry/geometry-calculations.js';
import { specialCalculations } from './special/special-calculations.js';
import { strengthCalculations } from './strength/strength-calculations.js';

interface FieldSchema {
  readonly type?: string;
  readonly const?: string;
  readonly enum?: readonly string[];
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly exclusiveMaximum?: number;
}

/** Values of a field: both ends of its range, the size of real parts, and extremes. */
const valuesOf = (field: FieldSchema): fc.Arbitrary<unknown> => {
  if (field.const !== undefined) return fc.constant(field.const);
  if (field.enum !== undefined) return fc.constantFrom(...field.enum);
  const low = field.minimum ?? field.exclusiveMinimum ?? -1e300;
  const high = field.maximum ?? field.exclusiveMaximum ?? 1e300;
  if (field.type === 'integer') return fc.integer({ min: Math.max(low, -1000), max: Math.min(high, 1000) });
  const within = (value: number): boolean => value >= low && value <= high;
  const exponent = fc.double({ min: -12, max: 12, noNaN: true }).map((power) => 10 ** power);
  return fc.oneof(
    exponent.filter(within),
    fc.constantFrom(low, high, 0.001, 0.1, 1, 1e6, 1e8).filter(within),
    fc.double({ min: low, max: high, noNaN: true }),
  );
};

const inputsOf = (schema: z.ZodObject): fc.Arbitrary<Record<string, unknown>> => {
  const json = z.toJSONSchema(schema) as { properties?: Record<string, FieldSchema>; required?: string[] };
  const fields = Object.entries(json.properties ?? {}).map(
    ([name, field]) => [name, valuesOf(field)] as const,
  );
  return fc.record(Object.fromEntries(fields), { requiredKeys: json.required ?? [] });
};

const subjects = [
  ...closureCalculations,
  ...couplingCalculations,
  ...geometryCalculations,
  ...specialCalculations,
  ...strengthCalculations,
];

describe.each(subjects.map((subject) => [subject.id, subject] as const))('%s', (_id, subject) => {
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
      { numRuns: 300 },
    );
  });
});
