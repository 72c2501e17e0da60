import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { type Calculation, evaluate, evaluateWithEvidence } from './calculation.js';
import { stepFaults } from './redone-by-hand.js';

/**
 * One check case of `tests/reference/cases.json`: a calculation, its inputs, and the result that a source
 * outside the project gives for them. `relativeTolerance` 0 means equal.
 */
export interface ReferenceCase {
  readonly id: string;
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, number | string>>;
  readonly relativeTolerance: number;
  readonly source: string;
  readonly basis: string;
}

const casesFile = new URL('../../../tests/reference/cases.json', import.meta.url);

/** Every case of the file. For tests and for the handbook. */
export const allReferenceCases = (): readonly ReferenceCase[] =>
  JSON.parse(readFileSync(casesFile, 'utf8')) as readonly ReferenceCase[];

/** The cases whose calculation lies in a domain, for instance `strength`. For tests. */
export const referenceCases = (domain: string): readonly ReferenceCase[] =>
  allReferenceCases().filter((referenceCase) => referenceCase.calculation.startsWith(`${domain}.`));

/** Inputs on which a calculation gives a result. */
export type Sample = Pick<ReferenceCase, 'calculation' | 'inputs'>;

const samplesFile = new URL('../../../tests/bench/engineering-samples.json', import.meta.url);

/** A sample of each calculation that has no reference case. For tests and for the handbook. */
export const allSamples = (): readonly Sample[] =>
  JSON.parse(readFileSync(samplesFile, 'utf8')) as readonly Sample[];

/** The samples of a domain. For tests. */
export const samples = (domain: string): readonly Sample[] =>
  allSamples().filter(({ calculation }) => calculation.startsWith(`${domain}.`));

const agrees = (actual: unknown, expected: number | string, relativeTolerance: number): boolean =>
  typeof expected === 'number' && typeof actual === 'number'
    ? Math.abs(actual - expected) <= relativeTolerance * Math.abs(expected)
    : actual === expected;

const find = (calculations: readonly Calculation[], id: string): Calculation => {
  const subject = calculations.find((candidate) => candidate.id === id);
  assert(subject, `there is no calculation ${id}`);
  return subject;
};

/** Throws where the evidence of a sample gives another result, or cannot be redone. For tests. */
export const assertEvidence = (
  calculations: readonly Calculation[],
  { calculation, inputs }: Sample,
): void => {
  const subject = find(calculations, calculation);
  const [plain, evidence] = [evaluate(subject, inputs), evaluateWithEvidence(subject, inputs)];
  assert(plain.ok, `${calculation}: ${plain.ok ? '' : plain.error.message}`);
  assert(evidence.ok, `${calculation}: no evidence`);
  assert.deepEqual(evidence.value.outputs, plain.value, `${calculation}: the evidence gives another result`);
  assert(evidence.value.steps.length > 0, `${calculation}: no steps`);
  assert.deepEqual(stepFaults(evidence.value.steps), [], `${calculation}: the evidence cannot be redone`);
};

/**
 * Evaluates a case by the calculation that it names, and throws where a result leaves the tolerance, or the evidence
 * gives another result. For tests.
 */
export const assertReferenceCase = (
  calculations: readonly Calculation[],
  { id, calculation, inputs, expected, relativeTolerance, source }: ReferenceCase,
): void => {
  const subject = find(calculations, calculation);
  const outcome = evaluate(subject, inputs);
  assert(outcome.ok, `${id}: ${outcome.ok ? '' : outcome.error.message}`);
  for (const [field, value] of Object.entries(expected)) {
    const actual = outcome.value[field];
    assert(
      agrees(actual, value, relativeTolerance),
      `${id}: ${field} is ${String(actual)}; ${String(value)} ± ${String(relativeTolerance * 100)} % by ${source}`,
    );
  }
  assertEvidence(calculations, { calculation, inputs });
};
