import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { conicalEndPressure } from './conical-end.js';
import { openingFactor } from './flat-cover-rule.js';
import { glassTubePressure } from './glass-tube-pressure.js';
import { hydrostaticTest } from './hydrostatic-test.js';
import { thickWallStress } from './thick-wall-stress.js';

describe('a conical end', () => {
  const cone = {
    code: 'EN 13445-3' as const,
    thickness: 0.012,
    innerDiameter: 0.3,
    cylinderThickness: 0.012,
    halfAngleRad: Math.PI / 6,
    allowableStress: 112e6,
    jointEfficiency: 1,
  };

  it('is limited by the cone at a small angle, and its joint counts: 2 f z e cos α/(D_i + e cos α)', () => {
    // e cos α = 0.0103923 m: 2 × 112 MPa × 0.0103923/0.3103923 = 7.49979 MPa.
    expect(conicalEndPressure(cone) / 7.49979e6).toBeCloseTo(1, 5);
    expect(conicalEndPressure({ ...cone, jointEfficiency: 0.7 }) / 7.49979e6).toBeCloseTo(0.7, 5);
  });

  it('is limited by its junction at 60° on a thin cylinder: 2 f e_j/(D_c β)', () => {
    // e_j 2 mm, D_c 302 mm: √151 = 12.28821; β = 12.28821 × 1.7320508/(3 × 2.4142136) − 0.15 = 2.788679.
    const thin = { ...cone, cylinderThickness: 0.002, halfAngleRad: Math.PI / 3 };
    expect(conicalEndPressure(thin) / ((2 * 112e6 * 0.002) / (0.302 * 2.788679))).toBeCloseTo(1, 5);
    // The joint of the cone does not weaken the junction.
    expect(conicalEndPressure({ ...thin, jointEfficiency: 0.9 })).toBe(conicalEndPressure(thin));
  });

  it('has no limit at the junction where β is not above zero', () => {
    // Thick and steep: √(D_c/e_j) tan 10°/(3 × 2.0077) is 0.0777 and below 0.15.
    const steep = { ...cone, thickness: 0.05, cylinderThickness: 0.05, halfAngleRad: Math.PI / 18 };
    const cosine = Math.cos(Math.PI / 18);
    expect(conicalEndPressure(steep)).toBeCloseTo((2 * 112e6 * 0.05 * cosine) / (0.3 + 0.05 * cosine), 3);
  });
});

describe('openings of a cover', () => {
  const none = { central: 0, port: 0, portCount: 0, portCircle: 0 };

  it.each([
    // EN 13445-3 10.6 by hand: to the seal, to the centre, between neighbours.
    ['one in the centre', { ...none, central: 0.06 }, 0.8],
    ['a single port near the seal', { ...none, port: 0.02, portCount: 1, portCircle: 0.2 }, 0.8],
    ['a single port beside the centre', { central: 0.05, port: 0.03, portCount: 1, portCircle: 0.1 }, 0.2],
    ['close neighbours', { ...none, port: 0.03, portCount: 6, portCircle: 0.1 }, 0.4],
    ['no ports, whatever their size', { ...none, port: 0.05, portCircle: 0.1 }, 1],
    ['ports without size', { ...none, portCount: 8, portCircle: 0.1 }, 1],
  ])('leave of %s their share', (_words, openings, expected) => {
    expect(openingFactor(openings, 0.3)).toBeCloseTo(expected, 12);
  });
});

it('an ASME test is 1.3 P r: 10 bar and a ratio of 1.2 give 15.6 bar', () => {
  expect(
    evaluate(hydrostaticTest, { code: 'ASME VIII-1', pressurePaGauge: 10e5, stressRatio: 1.2 }),
  ).toMatchObject({ ok: true, value: { testPressurePaGauge: 15.6e5 } });
});

it('a tube has a bore', () => {
  const tube = { outerDiameterM: 0.02, permissibleStressPa: 7e6 };
  for (const thicknessM of [0.01, 0.011]) {
    expect(evaluate(glassTubePressure, { ...tube, thicknessM })).toMatchObject({
      ok: false,
      error: { field: 'thicknessM', allowed: 'less than half of outerDiameterM (0.01 m)' },
    });
  }
  expect(evaluate(glassTubePressure, { ...tube, thicknessM: 0.0099 }).ok).toBe(true);
});

it.each([0.1, 0.09])('a thick cylinder of 0.1 m has a wall: not to %d m', (outerRadiusM) => {
  expect(evaluate(thickWallStress, { pressurePaGauge: 1e6, innerRadiusM: 0.1, outerRadiusM })).toMatchObject({
    ok: false,
    error: { code: 'CALC_OUT_OF_RANGE', field: 'outerRadiusM' },
  });
});
