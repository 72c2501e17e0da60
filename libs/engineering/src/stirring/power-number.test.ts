import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { impellerTypes } from './impeller-constants.js';
import { powerCurveOf } from './power-curve.js';
import { powerNumber } from './power-number.js';

type Inputs = Parameters<typeof evaluate<typeof powerNumber.inputs, typeof powerNumber.outputs>>[1];

const value = (inputs: Inputs) => {
  const outcome = evaluate(powerNumber, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('power number against published values', () => {
  // mccabe-smith-harriott-5 ch. 9: table 9.3 (5.75 turbulent, laminar constant 65), example 9.2 (1.07 unbaffled at
  // Re 69 600); EKC 212 exercise (5.0 at Re 2000); fluid mechanics, heat and mass transfer p. 166 (about 5).
  const turbine: Inputs = {
    impeller: 'disc turbine',
    impellerDiameterM: 0.1,
    vesselDiameterM: 0.3,
    baffleCount: 4,
    reynolds: 1e5,
  };
  it.each([
    ['disc turbine, turbulent', turbine, 5.0],
    ['disc turbine, turbulent, fully baffled', turbine, 5.75],
    ['disc turbine at Re 2000', { ...turbine, reynolds: 2000 }, 5.0],
    ['disc turbine without baffles at Re 69 600', { ...turbine, baffleCount: 0, reynolds: 69_600 }, 1.07],
    ['disc turbine, laminar', { ...turbine, reynolds: 0.1 }, 650],
    // Table 9.3 as used in example 9.5: 1.27; Dickey 12.1: 1.37; laminar constant 44.5 (from memory, unverified).
    ['pitched blade turbine, example 9.5', { ...turbine, impeller: 'pitched blade turbine' }, 1.27],
    ['pitched blade turbine, Dickey', { ...turbine, impeller: 'pitched blade turbine' }, 1.37],
    ['pitched blade turbine, laminar', { ...turbine, impeller: 'pitched blade turbine', reynolds: 0.1 }, 445],
    // Fluid mechanics, heat and mass transfer p. 166: laminar constant 41 with pitch equal to the diameter.
    ['propeller, laminar', { ...turbine, impeller: 'propeller', reynolds: 0.1 }, 410],
    // Process reference sheet: 200 with 25 % spread for a close anchor.
    [
      'anchor, laminar',
      { impeller: 'anchor', impellerDiameterM: 0.95, vesselDiameterM: 1, reynolds: 0.1 },
      2000,
    ],
  ] satisfies [string, Inputs, number][])('%s lies in the band', (_name, inputs, published) => {
    const { lowPowerNumber, highPowerNumber } = value(inputs);
    expect(published).toBeGreaterThanOrEqual(lowPowerNumber);
    expect(published).toBeLessThanOrEqual(highPowerNumber);
  });

  it('keeps close to Nagata for a two-blade paddle in laminar flow', () => {
    // Nagata (1975), from memory, unverified: A = 14 + (b/T)(670 (d/T − 0.6)² + 185) with d/T 0.5, b/T 0.1.
    const nagata = 14 + 0.1 * (670 * (0.5 - 0.6) ** 2 + 185);
    const { laminarConstant } = value({
      impeller: 'paddle',
      impellerDiameterM: 0.1,
      vesselDiameterM: 0.2,
      reynolds: 0.01,
    });
    expect(Math.abs(laminarConstant / nagata - 1)).toBeLessThan(0.1);
  });

  it('takes a double ribbon as in example 9-6 of the handbook of industrial mixing', () => {
    const { laminarConstant } = value({
      impeller: 'double helical ribbon',
      impellerDiameterM: 1.9,
      vesselDiameterM: 2,
      reynolds: 1,
    });
    expect(laminarConstant).toBeCloseTo(357.4, 1);
  });

  it('takes four baffles, the careful side for torque, where nothing is said', () => {
    const { baffleCount, ...silent } = turbine;
    expect(value(silent)).toEqual(value({ ...silent, baffleCount }));
    expect(value(silent).powerNumber).toBeGreaterThan(value({ ...silent, baffleCount: 0 }).powerNumber);
  });

  it('does not call four baffles of a tenth fully baffled for a six-blade turbine', () => {
    expect(value({ ...turbine, reynolds: 1e6 }).powerNumber).toBeLessThan(0.9 * 5.82);
  });
});

describe('power number over its range', () => {
  const geometry = fc.record({
    impeller: fc.constantFrom(...impellerTypes),
    ratio: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
    baffleCount: fc.integer({ min: 0, max: 8 }),
    lowReynolds: fc.double({ min: -3.9, max: 7.9, noNaN: true }),
    step: fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
  });
  const diameter = (impeller: (typeof impellerTypes)[number], ratio: number): number =>
    impeller.includes('ribbon') || impeller === 'anchor' ? 0.7 + ratio / 4 : ratio;

  it('makes torque rise with speed: Np Re² increases with Re', () => {
    fc.assert(
      fc.property(geometry, ({ impeller, ratio, baffleCount, lowReynolds, step }) => {
        const curve = powerCurveOf({
          impeller,
          impellerDiameterM: diameter(impeller, ratio),
          vesselDiameterM: 1,
          baffleCount,
        });
        if (!curve.ok) throw new Error(curve.error.message);
        const [first, second] = [10 ** lowReynolds, 10 ** (lowReynolds + step)];
        expect(curve.value.at(second) * second ** 2).toBeGreaterThan(curve.value.at(first) * first ** 2);
      }),
      { numRuns: 400 },
    );
  });

  it('never falls below the laminar line or below the unbaffled curve', () => {
    fc.assert(
      fc.property(geometry, ({ impeller, ratio, baffleCount, lowReynolds }) => {
        const at = { impeller, impellerDiameterM: diameter(impeller, ratio), vesselDiameterM: 1 };
        const reynolds = 10 ** lowReynolds;
        const baffled = value({ ...at, baffleCount, reynolds });
        const open = value({ ...at, baffleCount: 0, reynolds });
        expect(baffled.powerNumber).toBeGreaterThanOrEqual(open.powerNumber * (1 - 1e-12));
        expect(baffled.powerNumber * reynolds).toBeGreaterThanOrEqual(baffled.laminarConstant * (1 - 1e-9));
      }),
      { numRuns: 400 },
    );
  });

  it.each([1e-4, 1e8])('is finite at Re %d, an end of the range', (reynolds) => {
    for (const impeller of impellerTypes) {
      const found = value({
        impeller,
        impellerDiameterM: diameter(impeller, 0.5),
        vesselDiameterM: 1,
        reynolds,
      });
      expect(found.powerNumber).toBeGreaterThan(0);
    }
  });

  it.each([
    [
      'Re below the range',
      { impeller: 'paddle', impellerDiameterM: 0.1, vesselDiameterM: 0.3, reynolds: 9e-5 },
    ],
    [
      'Re above the range',
      { impeller: 'paddle', impellerDiameterM: 0.1, vesselDiameterM: 0.3, reynolds: 2e8 },
    ],
    [
      'a paddle as wide as the vessel',
      { impeller: 'paddle', impellerDiameterM: 1, vesselDiameterM: 1, reynolds: 1 },
    ],
    [
      'an anchor far from the wall',
      { impeller: 'anchor', impellerDiameterM: 0.5, vesselDiameterM: 1, reynolds: 1 },
    ],
  ] satisfies [string, Inputs][])('refuses %s with a code', (_name, inputs) => {
    const outcome = evaluate(powerNumber, inputs);
    expect(outcome.ok).toBe(false);
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });
});
