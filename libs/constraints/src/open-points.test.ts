import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoCatalogue } from '@flangewise/catalogue';
import { systemSchema } from '@flangewise/model';
import { expect, it } from 'vitest';
import { assess } from './assess.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';

const file = join(import.meta.dirname, '../../../tests/acceptance/systems/01-hydrogenation.json');

const range = rangeOf(demoCatalogue, { deliveryDays: () => 0 });

/** The system with other media. */
const assessWith = (media?: readonly object[]) => {
  const document = JSON.parse(readFileSync(file, 'utf8')) as { inquiry: { process: { media: unknown } } };
  if (media !== undefined) document.inquiry.process.media = media;
  return assess(systemSchema.parse(document), { range, rules: ruleBook });
};

it.each([
  ['as it is', undefined],
  [
    'as the solvent',
    [
      { substance: 'nitro compound', role: 'solvent' },
      { substance: 'hydrogen', role: 'gas' },
    ],
  ],
])('asks once for a substance that no table knows, whatever hangs on it, %s', (_, media) => {
  const { openPoints, results } = assessWith(media);
  const about = openPoints.filter(({ question }) => question.includes('nitro compound'));
  expect(about.map(({ field }) => field)).toEqual(['process.media']);
  const undecided = results.filter(({ missing }) => missing.some((one) => one.includes('nitro compound')));
  expect(undecided.length).toBeGreaterThan(1);
  expect(about[0]?.rules).toEqual(expect.arrayContaining(undecided.map(({ rule }) => rule)));
});

it('asks for what is missing of a known substance beside an unknown one whose name ends its name', () => {
  const { openPoints } = assessWith([
    { substance: 'sulfuric acid', role: 'solvent' },
    { substance: 'acid', role: 'reactant' },
  ]);
  expect(openPoints.map(({ field }) => field)).toContainEqual(expect.stringMatching(/ in sulfuric acid$/));
});
