import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import {
  classifyVessel,
  highestCategory,
  pedCategories,
  type PedCategory,
  type VesselPoint,
} from './annex-ii-vessels.js';
import { vesselCategory } from './vessel-category.js';

type Kind = Pick<VesselPoint, 'fluidState' | 'fluidGroup'>;

const rank = (category: PedCategory): number => pedCategories.indexOf(category);
const kinds: readonly Kind[] = [
  { fluidState: 'gas', fluidGroup: 1 },
  { fluidState: 'gas', fluidGroup: 2 },
  { fluidState: 'liquid', fluidGroup: 1 },
  { fluidState: 'liquid', fluidGroup: 2 },
];
const volume = fc.double({ min: 0.001, max: 1e5, noNaN: true });
const pressure = fc.double({ min: 0, max: 5000, noNaN: true });

describe('tables 1 to 4 of annex II', () => {
  it('never ask for less when pressure or volume rises', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.tuple(volume, volume),
        fc.tuple(pressure, pressure),
        (kind, [v1, v2], [p1, p2]) => {
          const small = classifyVessel({
            ...kind,
            volumeL: Math.min(v1, v2),
            maxPressureBarGauge: Math.min(p1, p2),
          });
          const large = classifyVessel({
            ...kind,
            volumeL: Math.max(v1, v2),
            maxPressureBarGauge: Math.max(p1, p2),
          });
          expect(rank(large.category)).toBeGreaterThanOrEqual(rank(small.category));
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('ask for most with a gas of group 1 and for least with a liquid of group 2', () => {
    fc.assert(
      fc.property(volume, pressure, (volumeL, maxPressureBarGauge) => {
        const [gas1, gas2, liquid1, liquid2] = kinds.map((kind) =>
          rank(classifyVessel({ ...kind, volumeL, maxPressureBarGauge }).category),
        ) as [number, number, number, number];
        expect(gas1).toBeGreaterThanOrEqual(gas2);
        expect(gas1).toBeGreaterThanOrEqual(liquid1);
        expect(gas2).toBeGreaterThanOrEqual(liquid2);
        expect(liquid1).toBeGreaterThanOrEqual(liquid2);
      }),
      { numRuns: 3000 },
    );
  });

  it.each([
    // Article 4(1): gases of group 1 above 25 bar·L beyond 1 L, or above 200 bar; group 2 50 bar·L, 1 000 bar;
    // liquids of group 1 200 bar·L beyond 1 L, 500 bar; group 2 10 bar with 10 000 bar·L, 1 000 bar.
    [{ fluidState: 'gas', fluidGroup: 1 }, 1, 200],
    [{ fluidState: 'gas', fluidGroup: 1 }, 2.5, 10],
    [{ fluidState: 'gas', fluidGroup: 2 }, 1, 1000],
    [{ fluidState: 'gas', fluidGroup: 2 }, 5, 10],
    [{ fluidState: 'liquid', fluidGroup: 1 }, 1, 500],
    [{ fluidState: 'liquid', fluidGroup: 1 }, 20, 10],
    [{ fluidState: 'liquid', fluidGroup: 2 }, 1e6, 10],
    [{ fluidState: 'liquid', fluidGroup: 2 }, 10, 1000],
  ] as const)(
    'lies on the limit of article 4(1) at %o %d L %d bar, and above it with more pressure',
    (kind, volumeL, ps) => {
      expect(classifyVessel({ ...kind, volumeL, maxPressureBarGauge: ps }).category).toBe('Art4(3)');
      const above = classifyVessel({ ...kind, volumeL, maxPressureBarGauge: ps * 1.001 });
      expect(rank(above.category)).toBeGreaterThan(rank('Art4(3)'));
    },
  );

  it('begin above 0.5 bar', () => {
    for (const kind of kinds) {
      expect(classifyVessel({ ...kind, volumeL: 1e5, maxPressureBarGauge: 0.5 }).category).toBe(
        'out of scope',
      );
      expect(classifyVessel({ ...kind, volumeL: 1e5, maxPressureBarGauge: 0.501 }).category).not.toBe(
        'out of scope',
      );
    }
  });

  it.each([
    // Readings of table 2 at PS up to 4 bar and of table 3 at V up to 1 L differ between sources.
    [{ fluidState: 'gas', fluidGroup: 2, volumeL: 400, maxPressureBarGauge: 3 }, 'III'],
    [{ fluidState: 'gas', fluidGroup: 2, volumeL: 2000, maxPressureBarGauge: 3 }, 'IV'],
    [{ fluidState: 'liquid', fluidGroup: 1, volumeL: 0.8, maxPressureBarGauge: 400 }, 'Art4(3)'],
    [{ fluidState: 'liquid', fluidGroup: 1, volumeL: 0.8, maxPressureBarGauge: 600 }, 'III'],
  ] as const)('send a disputed point to the notified body: %o', (point, category) => {
    const result = evaluate(vesselCategory, point);
    expect(result.ok && result.value).toMatchObject({
      category,
      disputed: true,
      advice: 'check with the notified body',
    });
  });

  it('are not disputed beside those regions', () => {
    const gas2 = classifyVessel({ fluidState: 'gas', fluidGroup: 2, volumeL: 300, maxPressureBarGauge: 4.1 });
    expect(gas2.disputed).toBe(false);
    const liquid1 = classifyVessel({
      fluidState: 'liquid',
      fluidGroup: 1,
      volumeL: 1.01,
      maxPressureBarGauge: 400,
    });
    expect(liquid1.disputed).toBe(false);
  });

  it('refuse a volume or a pressure that is none', () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      const result = evaluate(vesselCategory, {
        fluidState: 'gas',
        fluidGroup: 1,
        volumeL: bad,
        maxPressureBarGauge: 10,
      });
      expect(result.ok).toBe(false);
    }
  });
});

describe('several chambers', () => {
  it('take the highest category', () => {
    expect(highestCategory(['II', 'Art4(3)'])).toBe('II');
    expect(highestCategory(['I', 'III', 'out of scope'])).toBe('III');
    expect(highestCategory([])).toBe('out of scope');
  });
});
