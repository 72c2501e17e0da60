import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { endForms } from '../geometry/end-form.js';
import { vessel } from '../geometry/vessel.js';
import { vesselRating } from '../strength/vessel-rating.js';
import { stepFaults } from '../redone-by-hand.js';
import { specialVessel } from './special-vessel.js';

const base = {
  code: 'EN 13445-3' as const,
  innerDiameterM: 0.2,
  volumeM3: 0.01,
  form: 'torispherical DIN 28013' as const,
  pressurePaGauge: 6e6,
  allowableStressPa: 110e6,
  densityKgPerM3: 7980,
};

describe('special.vessel', () => {
  it('holds its volume and carries its pressure, whatever the form', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...endForms),
        fc.double({ min: 1e5, max: 10e6, noNaN: true }),
        fc.double({ min: 0.004, max: 0.1, noNaN: true }),
        fc.constantFrom(0, 0.001),
        (form, pressurePaGauge, ...[volumeM3, corrosionAllowanceM]) => {
          const given = {
            ...base,
            form,
            coneHalfAngleDeg: 30,
            pressurePaGauge,
            volumeM3,
            corrosionAllowanceM,
          };
          const special = evaluate(specialVessel, given);
          if (!special.ok) {
            expect(special.error.code).toBe('CALC_OUT_OF_RANGE');
            return;
          }
          const { wallThicknessM, endThicknessM, cylinderLengthM, massKg } = special.value;
          const size = { innerDiameterM: 0.2, wallThicknessM, endThicknessM, form, coneHalfAngleDeg: 30 };
          const geometry = evaluate(vessel, { ...size, cylinderLengthM, densityKgPerM3: 7980 });
          expect(geometry.ok && geometry.value.innerVolumeM3).toBeCloseTo(volumeM3, 9);
          expect(geometry.ok && geometry.value.massKg).toBeCloseTo(massKg, 6);
          const rating = evaluate(vesselRating, {
            ...size,
            code: 'EN 13445-3',
            allowableStressPa: 110e6,
            corrosionAllowanceM,
          });
          expect(rating.ok && rating.value.pressurePaGauge).toBeGreaterThanOrEqual(
            pressurePaGauge * (1 - 1e-9),
          );
        },
      ),
    );
  });

  it('has walls, length and mass as by hand', () => {
    // EN 13445-3 7.4.2: e = P D_i / (2 f z − P) = 4 × 200 / (2 × 100 × 0.8 − 4) = 5.128 mm, + 1 mm, corroded bore 202 mm:
    // e = 4 × 202 / 156 = 5.179 mm, 6.179 mm → 6.5 mm.
    const special = evaluate(specialVessel, {
      ...base,
      form: 'hemispherical',
      pressurePaGauge: 4e6,
      allowableStressPa: 100e6,
      jointEfficiency: 0.8,
      corrosionAllowanceM: 0.001,
      volumeM3: 0.01,
    });
    if (!special.ok) throw new Error(special.error.message);
    const { wallThicknessM, endThicknessM, outerDiameterM, cylinderLengthM, totalDepthM, massKg } =
      special.value;
    expect(wallThicknessM).toBeCloseTo(0.0065, 12);
    // Sphere, 7.4.3: e = P D_i / (4 f z − P) = 4 × 202 / 316 = 2.557 mm, + 1 mm → 4 mm.
    expect(endThicknessM).toBeCloseTo(0.004, 12);
    expect(outerDiameterM).toBeCloseTo(0.213, 12);
    // L = (V − 2π/3 r³) / (π r²), r = 0.1 m
    const length = (0.01 - ((2 * Math.PI) / 3) * 1e-3) / (Math.PI * 0.01);
    expect(cylinderLengthM).toBeCloseTo(length, 9);
    expect(totalDepthM).toBeCloseTo(length + 0.1, 9);
    const shell = (Math.PI / 4) * (0.213 ** 2 - 0.2 ** 2) * length;
    const end = ((2 * Math.PI) / 3) * (0.104 ** 3 - 0.1 ** 3);
    expect(massKg / ((shell + end) * 7980)).toBeCloseTo(1, 9);
  });

  it('takes no end thicker than it must, and needs more volume than the end holds', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...endForms.filter((form) => form !== 'conical')),
        fc.double({ min: 1e5, max: 20e6, noNaN: true }),
        (form, pressurePaGauge) => {
          const special = evaluate(specialVessel, { ...base, form, pressurePaGauge, volumeM3: 0.1 });
          if (!special.ok) return;
          const { wallThicknessM, endThicknessM } = special.value;
          const thinner = evaluate(vesselRating, {
            ...{ code: base.code, innerDiameterM: 0.2, form, wallThicknessM, allowableStressPa: 110e6 },
            endThicknessM: endThicknessM - 0.0005,
          });
          expect(!thinner.ok || thinner.value.endPressurePaGauge < pressurePaGauge).toBe(true);
        },
      ),
    );
    // A hemisphere of 0.2 m holds 2π/3 × 10⁻³ m³: no cylinder is left.
    const full = evaluate(specialVessel, {
      ...base,
      form: 'hemispherical',
      volumeM3: ((2 * Math.PI) / 3) * 1e-3,
    });
    expect(full).toMatchObject({ ok: false, error: { field: 'volumeM3' } });
  });

  it('prices the material that is bought', () => {
    const special = evaluate(specialVessel, { ...base, pricePerKg: 12, blankFactor: 2 });
    expect(special.ok && special.value.blankMassKg / special.value.massKg).toBeCloseTo(2, 12);
    expect(special.ok && (special.value.materialPrice ?? 0) / special.value.massKg).toBeCloseTo(24, 9);
    const usual = evaluate(specialVessel, base);
    expect(usual.ok && usual.value.blankMassKg / usual.value.massKg).toBeCloseTo(1.6, 12);
    expect(usual.ok && 'materialPrice' in usual.value).toBe(false);
  });

  it('says what to change where the bore is too wide or the end too weak', () => {
    expect(evaluate(specialVessel, { ...base, volumeM3: 0.0005 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'volumeM3' },
    });
    expect(evaluate(specialVessel, { ...base, pressurePaGauge: 60e6 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'pressurePaGauge' },
    });
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(specialVessel, base);
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      ...['e', 'e_n', 'Y', 'Z', 'N', 'β_01', 'β_02', 'β', 'P_s', 'P_y', 'e_e'],
      ...['L', 'm', 'm_b'],
    ]);
    expect(evidence.ok && stepFaults(evidence.value.steps)).toEqual([]);
    const note = (given: object) => {
      const special = evaluateWithEvidence(specialVessel, { ...base, ...given });
      return special.ok && special.value.steps.at(-1)?.note;
    };
    expect(note({})).toBe('blank factor: common practice');
    expect(note({ blankFactor: 2 })).toBeUndefined();
  });
});
