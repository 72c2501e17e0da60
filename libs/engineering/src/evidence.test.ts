import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from './calculation.js';
import { redone, stepFaults } from './redone-by-hand.js';
import { allReferenceCases } from './reference-cases.js';
import { calculations } from './registry.js';

interface Sample {
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
}

const sampleFile = new URL('../../../tests/bench/engineering-samples.json', import.meta.url);
const samples: readonly Sample[] = [
  ...(JSON.parse(readFileSync(sampleFile, 'utf8')) as readonly Sample[]),
  ...allReferenceCases(),
];

describe.each(calculations.map((subject) => [subject.id, subject] as const))(
  'the evidence of %s',
  (id, subject) => {
    const own = samples.filter(({ calculation }) => calculation === id);

    it('has the outputs of the plain form, and steps that can be read', () => {
      expect(own.length).toBeGreaterThan(0);
      for (const { inputs } of own) {
        const [plain, evidence] = [evaluate(subject, inputs), evaluateWithEvidence(subject, inputs)];
        if (!plain.ok || !evidence.ok) throw new Error(`${id} refuses its sample ${JSON.stringify(inputs)}`);
        expect(evidence.value.outputs).toEqual(plain.value);
        expect(evidence.value.steps.length).toBeGreaterThan(0);
        for (const step of evidence.value.steps) {
          for (const text of [step.symbol, step.formula, step.substituted, step.unit]) {
            expect(typeof text === 'string' && text.length > 0).toBe(true);
          }
          for (const text of [step.symbol, step.formula, step.substituted, String(step.value)]) {
            expect(text).not.toMatch(/NaN|Infinity|undefined|\[object/u);
          }
        }
      }
    });
  },
);

describe('a step of the evidence', () => {
  it('gives its value again where it is redone from the numbers put in', () => {
    const wrong: string[] = [];
    let checked = 0;
    for (const { calculation: id, inputs } of samples) {
      const subject = calculations.find((candidate) => candidate.id === id);
      const evidence = subject && evaluateWithEvidence(subject, inputs);
      if (!evidence?.ok) continue;
      const { steps } = evidence.value;
      wrong.push(...stepFaults(steps).map((fault) => `${id} ${fault}`));
      checked += steps.filter(({ substituted }) => redone(substituted) !== undefined).length;
    }
    expect([...new Set(wrong)]).toEqual([]);
    expect(checked).toBeGreaterThan(300);
  });

  it.each([
    ['a formula without numbers', '2 · r', '2 × r', 4],
    ['numbers that give another value', '2 · r', '2 × 3', 7],
  ])('is refused for %s', (_words, formula, substituted, value) => {
    const step = { symbol: 'd', unit: 'm', formula, substituted, value };
    expect(stepFaults([step])).toHaveLength(1);
    expect(stepFaults([{ ...step, substituted: `2 × ${String(value / 2)}` }])).toEqual([]);
  });

  it.each([
    ['2 + 3 × 4', 14],
    ['(2 + 3) × 4 / 10', 2],
    ['π / 4 × 2²', Math.PI],
    ['max(1.43 × 10; 2 × 8)', 16],
    ['√(9) − −1', 4],
    ['2e-3 × 1e3', 2],
    ['T = 3 K', undefined],
    ['(1 + 2', undefined],
  ])('is redone from %s', (text, expected) => {
    if (expected === undefined) expect(redone(text)).toBeUndefined();
    else expect(redone(text)).toBeCloseTo(expected, 12);
  });
});
