import { describe, expect, it } from 'vitest';
import { type OpenedEnd, endOpeningPressure } from './end-opening.js';

// Corroded by 1 mm: e = 9 mm, e_b = 5 mm, d_eb = 100 mm.
const end: OpenedEnd = {
  form: 'hemispherical',
  innerDiameterM: 0.5,
  endThicknessM: 0.01,
  allowableStressPa: 100e6,
  corrosionAllowanceM: 0.001,
  endOpeningDiameterM: 0.1,
  endBranchThicknessM: 0.006,
};

const carried = (change: Partial<OpenedEnd>, unopened = 50e6): number => {
  const outcome = endOpeningPressure({ ...end, ...change }, unopened);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('an opening in the centre of an end', () => {
  // By hand for R = 251 mm: l_s = √(511 × 9) = 67.816, l_b = √(95 × 5) = 21.794 mm; metal 610.34 + 153.97 mm², under
  // pressure 251² × 117.816/511 + 45 × 30.794 = 15 911 mm²: 100 × 764.32/(15 911 + 382.2) = 4.691 MPa.
  it.each([
    ['hemispherical', 4.690956e6],
    // R = 0.9 D_i + c = 451 mm.
    ['2:1 ellipsoidal', 2.913942e6],
    // R = 0.8 D_e + c = 417 mm and D_e + c = 521 mm, with D_e = 520 mm.
    ['torispherical DIN 28013', 3.112279e6],
    ['torispherical DIN 28011', 2.577575e6],
  ] as const)('is balanced over the crown of a %s end', (form, expected) => {
    expect(carried({ form }) / expected).toBeCloseTo(1, 6);
  });

  it('grows by corrosion where there is no branch, or where it is gone', () => {
    expect(carried({ endBranchThicknessM: 0 }) / 3.95994e6).toBeCloseTo(1, 6);
    // 0.4 mm are lost, 0.6 mm of the rim after that.
    expect(carried({ endBranchThicknessM: 0.0004 }) / 3.973582e6).toBeCloseTo(1, 6);
  });

  it('takes its diameter off a flat end, 1 − d/D_i corroded, and the hole grows', () => {
    expect(carried({ form: 'flat' }) / (50e6 * (1 - 0.1 / 0.502))).toBeCloseTo(1, 12);
    expect(carried({ form: 'flat', endBranchThicknessM: 0 }) / (50e6 * (1 - 0.102 / 0.502))).toBeCloseTo(
      1,
      12,
    );
  });

  it('takes away nothing but the point of a cone', () => {
    expect(carried({ form: 'conical' })).toBe(50e6);
  });

  it('may be 0.6 of the bore wide and no more', () => {
    expect(endOpeningPressure({ ...end, endOpeningDiameterM: 0.3 }, 50e6).ok).toBe(true);
    expect(endOpeningPressure({ ...end, endOpeningDiameterM: 0.3001 }, 50e6)).toMatchObject({
      ok: false,
      error: { field: 'endOpeningDiameterM', allowed: 'up to 0.6 of the inner diameter (0.3 m)' },
    });
  });

  it('has a bore', () => {
    for (const endBranchThicknessM of [0.05, 0.06]) {
      expect(endOpeningPressure({ ...end, endBranchThicknessM }, 50e6)).toMatchObject({
        ok: false,
        error: {
          field: 'endBranchThicknessM',
          allowed: 'less than half of the diameter of the branch (0.05 m)',
        },
      });
    }
  });
});
