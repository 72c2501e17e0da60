import { readFileSync } from 'node:fs';
import { calculations, evaluate } from '@flangewise/engineering';
import { expect, it } from 'vitest';
import { findCalculations } from '../../apps/api/src/calculations/find-calculations.js';
import { runCalculation } from '../../apps/api/src/calculations/run-calculation.js';
import { run } from '../../apps/cli/src/testing/run.js';

interface Sample {
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
}

const read = (path: string): readonly Sample[] =>
  JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')) as readonly Sample[];

const samples = [...read('../bench/engineering-samples.json'), ...read('cases.json')];
const ids = calculations.map(({ id }) => id);

it('has a sample of every calculation', () => {
  expect(ids.filter((id) => !samples.some(({ calculation }) => calculation === id))).toEqual([]);
});

it('is listed by the command line and by the procedure, each with its source', async () => {
  const { out } = await run(['calc', 'list', '--json']);
  for (const list of [JSON.parse(out) as ReturnType<typeof findCalculations>, findCalculations()]) {
    expect(list.map(({ id }) => id).sort()).toEqual([...ids].sort());
    expect(list.every(({ source }) => source.length > 0)).toBe(true);
  }
});

it('gives the same result in the library, in the command line and in the procedure', async () => {
  const firsts = ids.flatMap((id) => samples.filter(({ calculation }) => calculation === id).slice(0, 1));
  const { out } = await run(
    ['calc', '--batch', '-'],
    firsts.map((sample, id) => JSON.stringify({ id, ...sample })).join('\n'),
  );
  const lines = out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as { readonly outputs?: unknown });
  expect(lines).toHaveLength(ids.length);
  firsts.forEach(({ calculation, inputs }, k) => {
    const subject = calculations.find(({ id }) => id === calculation);
    const plain = subject && evaluate(subject, inputs);
    expect(plain?.ok, calculation).toBe(true);
    if (!plain?.ok) return;
    expect(lines[k]?.outputs).toEqual(plain.value);
    const { outputs, steps } = runCalculation(calculation, inputs);
    expect(outputs).toEqual(plain.value);
    expect(steps.length).toBeGreaterThan(0);
  });
});
