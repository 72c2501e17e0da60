import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { handledMass, recommendedHandledMassKg } from './handled-mass.js';
import { liftingMultipliers, type LiftingTask } from './lifting-multipliers.js';
import { recommendedWeight } from './recommended-weight.js';

const ideal: LiftingTask = {
  horizontalM: 0.25,
  verticalM: 0.75,
  travelM: 0.25,
  asymmetryDeg: 0,
  frequencyPerMin: 0.2,
  durationH: 1,
  coupling: 'good',
};

const limit = (task: Partial<LiftingTask>): number => {
  const result = evaluate(recommendedWeight, { ...ideal, ...task });
  if (!result.ok) throw new Error(result.error.message);
  return result.value.recommendedWeightKg;
};

describe('multipliers of the revised lifting equation', () => {
  // NIOSH 94-110 (rev. 2021), metric form; points on its formulas and table 5.
  it.each([
    ['horizontal', { horizontalM: 0.2 }, 1],
    ['horizontal', { horizontalM: 0.3 }, 0.8333],
    ['horizontal', { horizontalM: 0.5 }, 0.5],
    ['horizontal', { horizontalM: 0.63 }, 0.3968],
    ['horizontal', { horizontalM: 0.64 }, 0],
    ['vertical', { verticalM: 0.3 }, 0.865],
    ['vertical', { verticalM: 1 }, 0.925],
    ['vertical', { verticalM: 1.5 }, 0.775],
    ['vertical', { verticalM: 1.75 }, 0.7],
    ['vertical', { verticalM: 1.76 }, 0],
    ['distance', { travelM: 0.2 }, 1],
    ['distance', { travelM: 0.25 }, 1],
    ['distance', { travelM: 0.4 }, 0.9325],
    ['distance', { travelM: 0.6 }, 0.895],
    ['distance', { travelM: 1.75 }, 0.8457],
    ['distance', { travelM: 1.76 }, 0],
    ['asymmetry', { asymmetryDeg: 30 }, 0.904],
    ['asymmetry', { asymmetryDeg: 45 }, 0.856],
    ['asymmetry', { asymmetryDeg: 135 }, 0.568],
    ['asymmetry', { asymmetryDeg: 136 }, 0],
    ['frequency', { frequencyPerMin: 0.5 }, 0.97],
    // Table 5, up to one hour: 0.94 at 1, 0.91 at 2 a minute, 0.80 at 5; halfway by straight lines.
    ['frequency', { frequencyPerMin: 1.5 }, 0.925],
    ['frequency', { frequencyPerMin: 5.5 }, 0.775],
    ['frequency', { frequencyPerMin: 0.1 }, 1],
    ['frequency', { frequencyPerMin: 6 }, 0.75],
    ['frequency', { frequencyPerMin: 12 }, 0.37],
    ['frequency', { frequencyPerMin: 15 }, 0.28],
    ['frequency', { frequencyPerMin: 16 }, 0],
    ['frequency', { frequencyPerMin: 13, verticalM: 0.74 }, 0],
    ['frequency', { frequencyPerMin: 0.2, durationH: 2 }, 0.95],
    ['frequency', { frequencyPerMin: 2, durationH: 2 }, 0.84],
    ['coupling', { coupling: 'good', verticalM: 0.5 }, 1],
    ['coupling', { coupling: 'fair', verticalM: 0.74 }, 0.95],
    ['coupling', { coupling: 'fair', verticalM: 0.75 }, 1],
    ['coupling', { coupling: 'poor', verticalM: 0.75 }, 0.9],
  ] as const)('%s at %o is %d', (name, task, expected) => {
    expect(liftingMultipliers({ ...ideal, ...task })[name]).toBeCloseTo(expected, 3);
  });
});

describe('recommended weight limit', () => {
  it('is 23 kg at best', () => {
    expect(limit({})).toBe(23);
  });

  it.each([
    [{ horizontalM: 0.4, travelM: 0.5 }, 13.081],
    [
      {
        horizontalM: 0.3,
        verticalM: 1,
        travelM: 0.8,
        asymmetryDeg: 45,
        frequencyPerMin: 1,
        coupling: 'fair',
      },
      12.5,
    ],
  ] as const)('is the product of the multipliers: %o', (task, expected) => {
    expect(limit(task)).toBeCloseTo(expected, 2);
  });

  it('gives the lifting index of a load', () => {
    const result = evaluate(recommendedWeight, { ...ideal, loadKg: 18 });
    expect(result.ok && result.value.liftingIndex).toBeCloseTo(0.7826, 4);
  });

  it('never grows when reach, turn, travel, frequency or duration grow', () => {
    const reach = fc.double({ min: 0.01, max: 3, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(reach, reach, fc.tuple(share, share), (a, b, [f1, f2]) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(limit({ horizontalM: high })).toBeLessThanOrEqual(limit({ horizontalM: low }));
        expect(limit({ travelM: high })).toBeLessThanOrEqual(limit({ travelM: low }) + 1e-12);
        expect(limit({ asymmetryDeg: high * 60 })).toBeLessThanOrEqual(limit({ asymmetryDeg: low * 60 }));
        const [slow, fast] = [Math.min(f1, f2) * 20, Math.max(f1, f2) * 20];
        expect(limit({ frequencyPerMin: fast })).toBeLessThanOrEqual(
          limit({ frequencyPerMin: slow }) + 1e-12,
        );
        expect(limit({ frequencyPerMin: slow, durationH: 8 })).toBeLessThanOrEqual(
          limit({ frequencyPerMin: slow, durationH: 2 }),
        );
      }),
    );
  });

  it('refuses odd input with a code', () => {
    for (const bad of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      const result = evaluate(recommendedWeight, { ...ideal, horizontalM: bad });
      expect(!result.ok && result.error.code).toMatch(/^CALC_/);
    }
  });
});

describe('handled mass', () => {
  const needsLift = (massKg: number, liftsPerDay: number): boolean => {
    const result = evaluate(handledMass, { massKg, liftsPerDay });
    if (!result.ok) throw new Error(result.error.message);
    return result.value.needsLift;
  };

  it('needs a lift above the limit of one person', () => {
    // 25 × 0.25/0.4 × (1 − 0.3 × 0.15) × (0.82 + 0.045/0.3) × (1 − 0.0032 × 30) = 13.08 kg for a cover twice a day.
    const most = recommendedHandledMassKg({ liftsPerDay: 2 });
    expect(most).toBeCloseTo(13.08, 1);
    expect(needsLift(most * 0.999, 2)).toBe(false);
    expect(needsLift(most * 1.001, 2)).toBe(true);
  });

  it('gives the use of the limit and the mass of the day', () => {
    const result = evaluate(handledMass, { massKg: 10, liftsPerDay: 6 });
    if (!result.ok) throw new Error(result.error.message);
    expect(result.value.utilisation).toBeCloseTo(10 / recommendedHandledMassKg({ liftsPerDay: 6 }), 12);
    expect(result.value.dailyMassKg).toBe(60);
  });

  it('counts as a short task up to 0.2 lifts a minute, 96 a shift, and as a long one above', () => {
    // FM 1 up to one hour and 0.85 over eight at 0.2 a minute, from there by the long column.
    const [rare, often] = [96, 97].map((liftsPerDay) => recommendedHandledMassKg({ liftsPerDay }));
    expect((often ?? 0) / (rare ?? 1)).toBeCloseTo(0.85, 2);
  });

  it('takes a given grip: a poor one costs a tenth', () => {
    const by = (coupling: 'good' | 'poor') => recommendedHandledMassKg({ liftsPerDay: 2, coupling });
    expect(by('poor') / by('good')).toBeCloseTo(0.9, 12);
  });

  it('needs a lift from 3 kg on, where the limit is none', () => {
    const result = evaluate(handledMass, { massKg: 3, liftsPerDay: 10, horizontalM: 0.7 });
    expect(result.ok && result.value.needsLift).toBe(true);
  });

  it('is limited by the day where a part is lifted very often', () => {
    const task = { liftsPerDay: 4000, horizontalM: 0.25, verticalM: 0.75, travelM: 0.25, asymmetryDeg: 0 };
    expect(recommendedHandledMassKg(task)).toBeLessThanOrEqual(10_000 / 4000);
  });

  it('asks for no lift below 3 kg, where the standard does not apply', () => {
    const result = evaluate(handledMass, { massKg: 2.9, liftsPerDay: 10, horizontalM: 0.7 });
    expect(result.ok && result.value).toMatchObject({ recommendedLimitKg: 0, needsLift: false });
    expect(result.ok && result.value.utilisation).toBeUndefined();
  });

  it('never allows more when the part is lifted more often', () => {
    const often = fc.double({ min: 0.1, max: 7200, noNaN: true });
    fc.assert(
      fc.property(often, often, (a, b) => {
        const rare = recommendedHandledMassKg({ liftsPerDay: Math.min(a, b) });
        const frequent = recommendedHandledMassKg({ liftsPerDay: Math.max(a, b) });
        expect(frequent).toBeLessThanOrEqual(rare + 1e-12);
      }),
    );
  });
});
