import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate } from '../calculation.js';
import { endRating, type VesselEnd } from './end-rating.js';
import { flatEndPressure } from './flat-end-pressure.js';
import { spherePressure } from './sphere-pressure.js';
import { torisphericalLimits } from './torispherical-en-13445.js';

// Corroded by 1 mm: bore 302 mm, wall 13 mm; D_e = 328 mm.
const end: VesselEnd = {
  code: 'EN 13445-3',
  form: 'flat',
  innerDiameter: 0.3,
  thickness: 0.014,
  cylinderThickness: 0.012,
  corrosionAllowance: 0.001,
  coneHalfAngleDeg: undefined,
  attachmentFactor: undefined,
  allowableStress: 112e6,
  jointEfficiency: 0.85,
};
const carried = (change: Partial<VesselEnd>): number => {
  const outcome = endRating({ ...end, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};
const pressure = (subject: Calculation, inputs: Record<string, unknown>): number => {
  const outcome = evaluate(subject, { allowableStressPa: 112e6, ...inputs });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value['pressurePaGauge'] as number;
};
const codes = ['EN 13445-3', 'ASME VIII-1', 'AD 2000'] as const;

describe('the end of a vessel, corroded', () => {
  it.each([
    // 112 (13/(0.41 × 302))² and 112 (13/302)²/0.33 MPa.
    ['EN 13445-3', 1.234591e6],
    ['AD 2000', 1.234591e6],
    ['ASME VIII-1', 0.628893e6],
  ] as const)('is a flat plate by %s, attached as usual unless told otherwise', (code, expected) => {
    expect(carried({ code }) / expected).toBeCloseTo(1, 5);
    const attachmentFactor = 0.3;
    expect(
      carried({ code, attachmentFactor }) /
        pressure(flatEndPressure, {
          code,
          diameterM: 0.302,
          thicknessM: 0.013,
          attachmentFactor,
          jointEfficiency: 1,
        }),
    ).toBeCloseTo(1, 12);
  });

  it('counts a flat plate thicker than wide as one as thick as wide', () => {
    expect(carried({ thickness: 0.4 })).toBeCloseTo(112e6 / 0.41 ** 2, 3);
  });

  it.each(codes)('is a hemisphere by %s', (code) => {
    expect(
      carried({ code, form: 'hemispherical' }) /
        pressure(spherePressure, { code, innerRadiusM: 0.151, thicknessM: 0.013, jointEfficiency: 0.85 }),
    ).toBeCloseTo(1, 12);
  });

  // Corroded from 10 to 9 mm; D_e = 320 mm. A form of the standard stays that form when it corrodes.
  const wall = 0.009;
  it.each([
    // M = (3 + √(R/r))/4: 2 × 112 × 0.85 × 9/(R M + 1.8) MPa, R = 321 and 257, r = 33 and 50.28 mm.
    ['ASME VIII-1', 'torispherical DIN 28011', 3.477002e6],
    ['ASME VIII-1', 'torispherical DIN 28013', 5.042838e6],
    // β = 1.9 + 0.0325/Y^0.7 and 1.55 + 0.0255/Y^0.625, Y = 9/320: 4 × 112 × 0.85 × 9/(320 β).
    ['AD 2000', 'torispherical DIN 28011', 4.664961e6],
    ['AD 2000', 'torispherical DIN 28013', 5.991253e6],
  ] as const)('is a torisphere by %s, %s', (code, form, expected) => {
    expect(carried({ code, form, thickness: 0.01 }) / expected).toBeCloseTo(1, 5);
  });

  it.each([
    ['torispherical DIN 28011', 0.321, 0.033],
    ['torispherical DIN 28013', 0.257, 0.05028],
  ] as const)('is a torisphere by EN 13445-3, %s', (form, crownRadius, knuckleRadius) => {
    const shape = { crownRadius, knuckleRadius, allowableStress: 112e6, jointEfficiency: 0.85 };
    const { crown, knuckle } = torisphericalLimits(shape, wall, 0.32);
    expect(carried({ form, thickness: 0.01 }) / Math.min(crown, knuckle)).toBeCloseTo(1, 12);
  });

  it('is a cone by EN 13445-3, limited by what is left of the cylinder at its junction', () => {
    // e_j 4 − 1 = 3 mm on 302 mm: D_c = 305 mm, √(D_c/e_j) = 10.0830; β = 10.0830 × √3/(3 (1 + √2)) − 0.15 = 2.261310.
    const cone = { form: 'conical' as const, coneHalfAngleDeg: 60, cylinderThickness: 0.004 };
    expect(carried(cone) / ((2 * 112e6 * 0.003) / (0.305 * 2.26131))).toBeCloseTo(1, 4);
  });
});

describe('an end that a code does not have', () => {
  it.each([
    [
      'a cone of 31° by ASME VIII-1',
      { code: 'ASME VIII-1', form: 'conical', coneHalfAngleDeg: 31 },
      'coneHalfAngleDeg',
    ],
    ['a cone by AD 2000', { code: 'AD 2000', form: 'conical', coneHalfAngleDeg: 30 }, 'code'],
    ['an ellipsoid by AD 2000', { code: 'AD 2000', form: '2:1 ellipsoidal' }, 'code'],
    ['a cone without its angle', { form: 'conical' }, 'coneHalfAngleDeg'],
    ['a cone of 61°', { form: 'conical', coneHalfAngleDeg: 61 }, 'coneHalfAngleDeg'],
  ] satisfies [string, Partial<VesselEnd>, string][])('is refused: %s', (_words, change, field) => {
    expect(endRating({ ...end, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
