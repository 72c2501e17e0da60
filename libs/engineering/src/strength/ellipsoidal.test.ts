import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { ellipsoidalPressure } from './ellipsoidal-pressure.js';
import { ellipsoidalThickness } from './ellipsoidal-thickness.js';
import { vesselRating } from './vessel-rating.js';

const en = {
  code: 'EN 13445-3' as const,
  innerDiameterM: 0.5,
  allowableStressPa: 111e6,
  jointEfficiency: 1,
};
const asme = { ...en, code: 'ASME VIII-1' as const, allowableStressPa: 100e6 };

const pressureOf = (
  inputs: Parameters<
    typeof evaluate<typeof ellipsoidalPressure.inputs, typeof ellipsoidalPressure.outputs>
  >[1],
) => {
  const outcome = evaluate(ellipsoidalPressure, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.pressurePaGauge;
};

describe('a 2:1 ellipsoidal end of 500 mm by EN 13445-3, as a torisphere of R = 450, r = 85 mm', () => {
  // 0.75 R + 0.2 D_i = 437.5 mm.
  it.each([
    // β = 0.5763: 111 × 6/(0.5763 × 437.5) = 2.6415 MPa at the knuckle.
    ['yields at its knuckle', 0.006, 2.641481e6],
    // β = 0.6577: 111 × 2/(0.6577 × 437.5) = 0.7715 MPa; buckling 111 × 111 (2/437.5)^1.5 0.17^0.825 = 0.8828 MPa.
    ['does so when thin', 0.002, 0.7715406e6],
    // 2 × 111 × 30/(450 + 15) = 14.3226 MPa.
    ['yields in its crown when thick', 0.03, 14.322581e6],
  ])('%s', (_words, thicknessM, expected) => {
    expect(pressureOf({ ...en, thicknessM }) / expected).toBeCloseTo(1, 6);
  });

  it('is from 0.001 to 0.08 of its outer diameter thick', () => {
    for (const thicknessM of [0.000502, 0.0476]) {
      expect(evaluate(ellipsoidalPressure, { ...en, thicknessM }).ok).toBe(true);
    }
    for (const thicknessM of [0.0005, 0.0477]) {
      expect(evaluate(ellipsoidalPressure, { ...en, thicknessM })).toMatchObject({
        ok: false,
        error: {
          field: 'thicknessM',
          allowed: '0.000501002 to 0.047619 m (0.001 to 0.08 of the outer diameter)',
        },
      });
    }
  });

  it('has at least the least wall, and says what the thickest carries', () => {
    const need = (pressurePaGauge: number) => evaluate(ellipsoidalThickness, { ...en, pressurePaGauge });
    expect(need(1e3)).toMatchObject({ ok: true, value: { thicknessM: (0.001 / 0.998) * 0.5 } });
    // 2 × 111 × 47.619/(450 + 23.81) = 22.3116 MPa.
    expect(need(22.3e6).ok).toBe(true);
    expect(need(22.4e6)).toMatchObject({
      ok: false,
      error: { field: 'pressurePaGauge', allowed: expect.stringContaining('at most 22311600 Pa') as string },
    });
  });
});

describe('a 2:1 ellipsoidal end of 500 mm by ASME VIII-1', () => {
  it('is from 0.0018 to a quarter of its diameter thick', () => {
    for (const thicknessM of [0.00091, 0.1249]) {
      expect(pressureOf({ ...asme, thicknessM }) / ((200e6 * thicknessM) / (0.5 + 0.2 * thicknessM))).toBe(1);
    }
    for (const thicknessM of [0.00089, 0.1251]) {
      expect(evaluate(ellipsoidalPressure, { ...asme, thicknessM })).toMatchObject({
        ok: false,
        error: { allowed: '0.0009 to 0.125 m (0.0018 to 0.25 of the inner diameter)' },
      });
    }
  });

  it('has at least the least wall, and an end at 2 S E/4.2', () => {
    const need = (pressurePaGauge: number) => evaluate(ellipsoidalThickness, { ...asme, pressurePaGauge });
    expect(need(1e3)).toMatchObject({ ok: true, value: { thicknessM: 0.0009 } });
    expect(need(47.6e6).ok).toBe(true);
    // From 10 S E on the formula would turn its sign.
    for (const pressure of [47.7e6, 999e6, 1000e6, 1100e6]) {
      expect(need(pressure)).toMatchObject({ ok: false, error: { field: 'pressurePaGauge' } });
    }
  });
});

it.each([
  ['EN 13445-3', 'EN 13445-3 7.5.4'],
  ['ASME VIII-1', 'UG-32(d)'],
] as const)('the wall by %s is shown with the pressure that it carries', (code, clause) => {
  const given = { ...en, code, pressurePaGauge: 3e6 };
  const evidence = evaluateWithEvidence(ellipsoidalThickness, given);
  if (!evidence.ok) throw new Error(evidence.error.message);
  const [wall, pressure] = evidence.value.steps;
  expect(wall).toMatchObject({ symbol: 'e', unit: 'm', value: evidence.value.outputs['thicknessM'] });
  expect(pressure).toMatchObject({ symbol: 'P', unit: 'Pa' });
  expect((pressure?.value as number) / 3e6).toBeCloseTo(1, 9);
  expect(pressure?.note).toContain(clause);
});

it.each([
  ['EN 13445-3', (0.08 / 0.84) * 0.3],
  ['ASME VIII-1', 0.075],
] as const)('a wall beyond the formula of %s counts as the thickest', (code, thickest) => {
  const rated = (endThicknessM: number) => {
    const outcome = evaluate(vesselRating, {
      code,
      innerDiameterM: 0.3,
      wallThicknessM: 0.012,
      form: '2:1 ellipsoidal',
      endThicknessM,
      allowableStressPa: 111e6,
    });
    return outcome.ok ? outcome.value.endPressurePaGauge : Number.NaN;
  };
  expect(rated(0.09)).toBeCloseTo(rated(thickest), 3);
  expect(rated(0.09)).toBeGreaterThan(rated(thickest * 0.99));
});
