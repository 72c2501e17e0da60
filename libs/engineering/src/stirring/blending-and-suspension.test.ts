import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { blendTime } from './blend-time.js';
import { gassedPowerRatio } from './gassed-power-ratio.js';
import { impellerConstantsOf, impellerTypes } from './impeller-constants.js';
import { justSuspendedSpeed } from './just-suspended-speed.js';
import { laminarPower } from './laminar-power.js';
import { motorPower } from './motor-power.js';
import { metznerOttoConstant, zwieteringConstant } from './shear-and-suspension-constants.js';
import { viscosityRange } from './viscosity-range.js';

const turbine = {
  impellerDiameterM: 0.1,
  vesselDiameterM: 0.3,
  speedPerS: 5,
  densityKgPerM3: 1000,
  viscosityPaS: 0.001,
  powerNumber: 5,
};

describe('blend time', () => {
  const timeOf = (inputs: object) => {
    const outcome = evaluate(blendTime, { ...turbine, ...inputs });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('is 5.2 (T/D)² / (Np^(1/3) N) in turbulent flow, whatever the viscosity', () => {
    const expected = (5.2 * 9) / (Math.cbrt(5) * 5);
    expect(timeOf({}).blendTimeS).toBeCloseTo(expected, 10);
    expect(timeOf({ viscosityPaS: 0.002 }).blendTimeS).toBeCloseTo(expected, 10);
  });

  it('joins its two branches without a step', () => {
    const viscosityAt = (c: number): number => (Math.cbrt(5) * 1000 * 5 * 0.01) / c;
    const boundary = 183 ** 2 / 5.2;
    const below = timeOf({ viscosityPaS: viscosityAt(boundary * (1 - 1e-9)) });
    const above = timeOf({ viscosityPaS: viscosityAt(boundary * (1 + 1e-9)) });
    expect([below.regime, above.regime]).toEqual(['transition', 'turbulent']);
    expect(below.blendTimeS / above.blendTimeS).toBeCloseTo(1, 7);
  });

  it('gives 651 s for the ribbon of example 9-6 of the handbook of industrial mixing', () => {
    // K_L 357.4, 4 1/min: 650.98 s (as run in the open library fluids 1.3.1, mixing).
    const found = timeOf({
      impellerDiameterM: 1.9,
      vesselDiameterM: 2,
      speedPerS: 4 / 60,
      viscosityPaS: 25,
      laminarConstant: 357.4,
    });
    expect(found.blendTimeS).toBeCloseTo(650.980654, 5);
  });

  it('holds at Np^(1/3) Re 200 and refuses below', () => {
    const limit = (Math.cbrt(5) * 1000 * 5 * 0.01) / 200;
    expect(timeOf({ viscosityPaS: limit * (1 - 1e-12) }).regime).toBe('transition');
    const outcome = evaluate(blendTime, { ...turbine, viscosityPaS: limit * 1.001 });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });

  it('falls with speed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 100, noNaN: true }), (speedPerS) => {
        expect(timeOf({ speedPerS: speedPerS * 1.1 }).blendTimeS).toBeLessThan(
          timeOf({ speedPerS }).blendTimeS,
        );
      }),
    );
  });
});

describe('solids just suspended', () => {
  const sand = {
    zwieteringConstant: 5,
    kinematicViscosityM2PerS: 1e-6,
    particleDiameterM: 2e-4,
    solidDensityKgPerM3: 2648,
    liquidDensityKgPerM3: 998,
    solidsMassPercent: 10,
    impellerDiameterM: 0.1,
  };

  it.each([
    ['particleDiameterM', 5e-5, 4.9e-5],
    ['particleDiameterM', 3e-3, 3.01e-3],
    ['solidsMassPercent', 0.1, 0.09],
    ['solidsMassPercent', 20, 20.1],
    ['solidDensityKgPerM3', 1048, 1047],
    ['solidDensityKgPerM3', 2998, 2999],
  ])('%s: holds at %d and refuses %d', (field, inside, outside) => {
    expect(evaluate(justSuspendedSpeed, { ...sand, [field]: inside }).ok).toBe(true);
    const outcome = evaluate(justSuspendedSpeed, { ...sand, [field]: outside });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });

  it('says that no constant is known for an anchor', () => {
    const outcome = evaluate(zwieteringConstant, { impeller: 'anchor' });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_MISSING_PROPERTY');
  });
});

describe('gassed power', () => {
  it('stays between 0 and 1 and falls with gas', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.01, noNaN: true }), (gasFlowM3PerS) => {
        const ratio = (q: number): number => {
          const outcome = evaluate(gassedPowerRatio, {
            speedPerS: 8,
            impellerDiameterM: 0.06,
            bladeWidthM: 0.015,
            liquidVolumeM3: 0.003,
            gasFlowM3PerS: q,
          });
          if (!outcome.ok) throw new Error(outcome.error.message);
          return outcome.value.powerRatio;
        };
        expect(ratio(gasFlowM3PerS)).toBeLessThanOrEqual(1);
        expect(ratio(gasFlowM3PerS)).toBeGreaterThan(0);
        expect(ratio(2 * gasFlowM3PerS)).toBeLessThanOrEqual(ratio(gasFlowM3PerS));
        expect(ratio(0)).toBe(1);
      }),
    );
  });
});

describe('laminar power', () => {
  const thick = {
    impellerDiameterM: 0.1,
    speedPerS: 1,
    densityKgPerM3: 1000,
    laminarConstant: 65,
  };
  it('holds at Re 100 and refuses above', () => {
    expect(evaluate(laminarPower, { ...thick, viscosityPaS: 0.1 * (1 + 1e-12) }).ok).toBe(true);
    expect(evaluate(laminarPower, { ...thick, viscosityPaS: 0.0999 }).ok).toBe(false);
  });
});

describe('motor power', () => {
  it('balances losses and efficiency', () => {
    const outcome = evaluate(motorPower, {
      shaftPowerW: 100,
      lossPowerW: 20,
      driveEfficiency: 0.8,
      serviceFactor: 1.5,
    });
    expect(outcome.ok && outcome.value.motorPowerW).toBeCloseTo(225, 12);
  });
});

describe('constants by impeller type', () => {
  it.each(impellerTypes)('%s has a row with ordered bands', (impeller) => {
    const { band, metznerOtto, viscosityPaS } = impellerConstantsOf(impeller);
    expect(band.low).toBeLessThan(1);
    expect(band.high).toBeGreaterThan(1);
    expect(metznerOtto.low).toBeLessThanOrEqual(metznerOtto.value);
    expect(metznerOtto.value).toBeLessThanOrEqual(metznerOtto.high);
    const shear = evaluate(metznerOttoConstant, { impeller });
    expect(shear.ok && shear.value.metznerOttoConstant).toBe(metznerOtto.value);
    const outcome = evaluate(viscosityRange, { impeller });
    expect(outcome.ok && outcome.value.upperViscosityPaS).toBe(viscosityPaS.upper);
  });
});
