import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { run } from '../../apps/cli/src/testing/run.js';

/** A check case: what a source outside the project gives for these inputs. */
interface Case {
  readonly id: string;
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, number | string>>;
  /** 0 means equal. */
  readonly relativeTolerance: number;
  readonly source: string;
}

interface Line {
  readonly id: string;
  readonly outputs?: Readonly<Record<string, unknown>>;
  readonly error?: { readonly code: string; readonly message: string };
}

const cases = JSON.parse(readFileSync(new URL('cases.json', import.meta.url), 'utf8')) as readonly Case[];

const agrees = (actual: unknown, expected: number | string, tolerance: number): boolean =>
  typeof expected === 'number' && typeof actual === 'number'
    ? Math.abs(actual - expected) <= tolerance * Math.abs(expected)
    : actual === expected;

/** What is wrong with an answer; empty where nothing is. */
const faults = (
  { id, expected, relativeTolerance, source }: Case,
  line: Line | undefined,
): readonly string[] => {
  if (line?.outputs === undefined) return [`${id}: ${line?.error?.message ?? 'no line'}`];
  const { outputs } = line;
  return Object.entries(expected).flatMap(([field, value]) =>
    agrees(outputs[field], value, relativeTolerance)
      ? []
      : [
          `${id}: ${field} is ${String(outputs[field])}; ${String(value)} ± ${String(relativeTolerance * 100)} % by ${source}`,
        ],
  );
};

it('gives every reference result through a batch, in order', async () => {
  const input = cases
    .map(({ id, calculation, inputs }) => JSON.stringify({ id, calculation, inputs }))
    .join('\n');
  const { exit, out, said } = await run(['calc', '--batch', '-'], input);
  const lines = out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);
  expect(exit).toBe(0);
  expect(said).toBe('');
  expect(lines.map(({ id }) => id)).toEqual(cases.map(({ id }) => id));
  expect(cases.flatMap((one, k) => faults(one, lines[k]))).toEqual([]);
  console.log(`${String(cases.length)} reference cases agree through calc --batch`);
});

it('goes on after lines that cannot be used, each with an error line of its own', async () => {
  const [first] = cases;
  const good = JSON.stringify({ id: 'good', calculation: first?.calculation, inputs: first?.inputs });
  const input = [
    good,
    '{broken',
    '',
    '7',
    '{"id":"a"}',
    '{"id":2,"calculation":"no.such","inputs":{}}',
    good,
  ].join('\n');
  const { exit, out, said } = await run(['calc', '--batch', '-'], input);
  const lines = out
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);
  expect(exit).toBe(0);
  expect(said).toContain('5 of 7 lines without a result');
  expect(lines.map(({ id, error }) => [id, error?.code])).toEqual([
    ['good', undefined],
    [null, 'INPUT_NOT_JSON'],
    [null, 'INPUT_NOT_JSON'],
    [null, 'INPUT_INVALID'],
    ['a', 'INPUT_INVALID'],
    [2, 'CALC_UNKNOWN_CALCULATION'],
    ['good', undefined],
  ]);
  expect(lines[1]?.error?.message).toContain('line 2');
});
