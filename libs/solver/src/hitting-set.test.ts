import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lightestHittingSet } from './hitting-set.js';

const ITEMS = 6;
const sets = fc.array(fc.uniqueArray(fc.nat(ITEMS - 1), { minLength: 1, maxLength: 4 }), { maxLength: 6 });
const weightsOf = fc.array(fc.integer({ min: 1, max: 5 }), { minLength: ITEMS, maxLength: ITEMS });

it('finds a hitting set as light as the lightest of all', () => {
  fc.assert(
    fc.property(sets, sets, weightsOf, (wanted, excluded, list) => {
      const weight = (items: readonly number[]): number => items.reduce((sum, i) => sum + list[i]!, 0);
      const hits = Array.from({ length: 2 ** ITEMS }, (_, bits) =>
        Array.from({ length: ITEMS }, (__, i) => i).filter((i) => ((bits >>> i) & 1) === 1),
      ).filter(
        (items) =>
          wanted.every((set) => set.some((i) => items.includes(i))) &&
          !excluded.some((set) => set.every((i) => items.includes(i))),
      );
      const task = { weights: Float64Array.from(list), sets: wanted, excluded };
      const found = lightestHittingSet(task, { tick: () => undefined, check: () => undefined });
      expect(found === null).toBe(hits.length === 0);
      if (found) expect(weight(found)).toBe(Math.min(...hits.map(weight)));
    }),
    { numRuns: 500, endOnFailure: true },
  );
});
