import { demoCatalogue } from '@flangewise/catalogue';
import { readDocument, type System, systemSchema } from '@flangewise/model';
import { expect, it } from 'vitest';
import { createBench } from './bench.js';
import { cheapest } from './cheapest.js';
import { filledWith } from './choices.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';
import { stands } from './stands.js';

const bench = createBench(rangeOf(demoCatalogue, { deliveryDays: () => 0 }), ruleBook);

const askedAt = (highest: string): System => {
  const inquiry = {
    title: 'Half a litre',
    process: { pressure: { highest } },
    sets: [{ batchVolume: '0.5 L' }],
  };
  const read = readDocument(systemSchema, { inquiry });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

it('agrees with the engine about what it found, and refuses the same under what it cannot bear', () => {
  const asked = askedAt('10 bar');
  const filled = cheapest(asked, bench);
  if (filled === undefined) throw new Error('the range answers half a litre at 10 bar');
  const { frame, sets } = filledWith(asked, filled);
  expect(stands({ ...asked, frame, sets }, bench)).toBe(true);
  expect(stands({ ...askedAt('3000 bar'), frame, sets }, bench)).toBe(false);
});
