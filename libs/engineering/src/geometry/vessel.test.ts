import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { endForms } from './end-form.js';
import { vessel } from './vessel.js';

const base = {
  innerDiameterM: 0.15,
  cylinderLengthM: 0.25,
  wallThicknessM: 0.012,
  endThicknessM: 0.015,
  form: 'torispherical DIN 28013' as const,
  densityKgPerM3: 7980,
};

const value = (inputs: Parameters<typeof vessel.compute>[0]) => {
  const outcome = evaluate(vessel, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('geometry.vessel', () => {
  it('adds cylinder and end', () => {
    const hemisphere = value({ ...base, form: 'hemispherical', endThicknessM: 0.012 });
    expect(hemisphere.innerVolumeM3).toBeCloseTo(
      (Math.PI / 4) * 0.15 ** 2 * 0.25 + (Math.PI / 12) * 0.15 ** 3,
      12,
    );
    const metal = (Math.PI / 4) * (0.174 ** 2 - 0.15 ** 2) * 0.25 + (Math.PI / 12) * (0.174 ** 3 - 0.15 ** 3);
    expect(hemisphere.massKg).toBeCloseTo(metal * 7980, 9);
  });

  it('counts a rim flange round the shell', () => {
    const flanged = value({ ...base, flangeOuterDiameterM: 0.3, flangeHeightM: 0.04 });
    expect(flanged.flangeMassKg).toBeCloseTo((Math.PI / 4) * (0.3 ** 2 - 0.174 ** 2) * 0.04 * 7980, 9);
  });

  it('is full at its own volume and dry at none', () => {
    const { innerVolumeM3, totalDepthM, innerAreaM2 } = value(base);
    const full = value({ ...base, fillVolumeM3: innerVolumeM3 });
    expect(full.fillDepthM).toBeCloseTo(totalDepthM, 9);
    expect(full.wettedAreaM2).toBeCloseTo(innerAreaM2, 9);
    expect(value({ ...base, fillVolumeM3: 0 }).fillDepthM).toBeCloseTo(0, 9);
  });

  it('refuses more contents than it holds, and says how much it holds', () => {
    const outcome = evaluate(vessel, { ...base, fillVolumeM3: 1 });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'fillVolumeM3' } });
  });

  it('asks for the angle of a cone and for both measures of a flange', () => {
    expect(evaluate(vessel, { ...base, form: 'conical' })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'coneHalfAngleDeg' },
    });
    expect(evaluate(vessel, { ...base, flangeHeightM: 0.04 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'flangeOuterDiameterM' },
    });
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(vessel, { ...base, fillVolumeM3: 0.002 });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'V_e',
      'V',
      'm_s',
      'm_e',
      'h_f',
      'A_f',
    ]);
  });

  it('answers finite numbers or a coded error from capillaries to tanks', () => {
    const extreme = fc.double({ min: 1e-9, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          innerDiameterM: extreme,
          cylinderLengthM: extreme,
          wallThicknessM: extreme,
          endThicknessM: extreme,
          form: fc.constantFrom(...endForms),
          coneHalfAngleDeg: fc.double({ min: 10, max: 75, noNaN: true }),
          densityKgPerM3: extreme,
          fillVolumeM3: extreme,
        }),
        (inputs) => {
          const outcome = evaluate(vessel, inputs);
          if (outcome.ok) {
            for (const number of Object.values(outcome.value)) expect(Number.isFinite(number)).toBe(true);
            expect(outcome.value.massKg).toBeGreaterThan(0);
          } else expect(outcome.error.code).toBe('CALC_OUT_OF_RANGE');
        },
      ),
    );
  });
});
