import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { endForms } from '../geometry/end-form.js';
import { vessel } from '../geometry/vessel.js';
import { vesselRating } from '../strength/vessel-rating.js';
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
      'e_n',
      'e_e',
      'L',
      'm',
      'm_b',
    ]);
  });
});
