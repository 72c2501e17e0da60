import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoCatalogue } from '@flangewise/catalogue';
import { systemSchema } from '@flangewise/model';
import { expect, it } from 'vitest';
import { assess } from './assess.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';

const file = join(import.meta.dirname, '../../../tests/acceptance/systems/01-hydrogenation.json');

it('asks once for a substance that no table knows, whatever hangs on it', () => {
  const range = rangeOf(demoCatalogue, { deliveryDays: () => 0 });
  const system = systemSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  const { openPoints, results } = assess(system, { range, rules: ruleBook });
  const about = openPoints.filter(({ question }) => question.includes('nitro compound'));
  expect(about.map(({ field }) => field)).toEqual(['process.media']);
  const undecided = results.filter(({ missing }) => missing.some((one) => one.endsWith('nitro compound')));
  expect(undecided.length).toBeGreaterThan(1);
  expect(about[0]?.rules).toEqual(expect.arrayContaining(undecided.map(({ rule }) => rule)));
});
