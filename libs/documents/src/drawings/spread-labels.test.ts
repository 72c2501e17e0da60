import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadLabels } from './spread-labels.js';

describe('labels down a column', () => {
  it('stay where they are wanted when there is room', () => {
    expect(spreadLabels([10, 50, 90], 20, [0, 100])).toEqual([10, 50, 90]);
  });

  it('part as little as they must', () => {
    const spread = spreadLabels([50, 50, 50], 10, [0, 100]);
    expect(spread[0]).toBeCloseTo(40, 9);
    expect(spread[1]).toBeCloseTo(50, 9);
    expect(spread[2]).toBeCloseTo(60, 9);
  });

  it('keep order, spacing and span', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -50, max: 150, noNaN: true }), { maxLength: 9 }), (wanted) => {
        const sorted = wanted.toSorted((a, b) => a - b);
        const spread = spreadLabels(sorted, 10, [0, 100]);
        spread.forEach((y, i) => {
          expect(y).toBeGreaterThanOrEqual(-1e-9);
          expect(y).toBeLessThanOrEqual(100 + 1e-9);
          if (i > 0) expect(y - spread[i - 1]!).toBeGreaterThanOrEqual(10 - 1e-9);
        });
      }),
    );
  });
});
