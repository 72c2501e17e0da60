import { readdirSync, readFileSync } from 'node:fs';
import type { SolveAnswer } from '@flangewise/model';
import { expect, it } from 'vitest';

const folder = new URL('../acceptance/answers/', import.meta.url);
const answers = readdirSync(folder)
  .filter((name) => name.endsWith('.solve.json'))
  .map((name) => [name, JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as SolveAnswer] as const);

it('ranks no candidate whose tightest check is exceeded', () => {
  const margins = answers.flatMap(([name, { candidates }]) =>
    candidates.map((one) => ({ name, letter: one.name, margin: one.leastMargin?.value ?? 0 })),
  );
  expect(margins.length).toBeGreaterThan(5);
  expect(margins.filter(({ margin }) => margin < 0)).toEqual([]);
});
