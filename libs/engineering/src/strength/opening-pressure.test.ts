import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { openingPressure } from './opening-pressure.js';
import { openingPressureOf } from './opening-rule.js';

const base = {
  shape: 'cylinder' as const,
  innerRadiusM: 0.15,
  thicknessM: 0.01,
  branchOuterDiameterM: 0.06,
  branchThicknessM: 0.005,
  allowableStressPa: 110e6,
};
const at = (change: object) => {
  const outcome = evaluate(openingPressure, { ...base, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('strength.openingPressure', () => {
  it.each([
    ['cylinder' as const, 2],
    ['sphere' as const, 4],
  ])('of no opening is the formula of the %s', (shape, factor) => {
    // EN 13445-3 7.4.2 and 7.4.3: 2 f e/(D_i + e) and 4 f e/(D_i + e).
    const pressure = openingPressureOf({
      shape,
      innerRadius: 0.15,
      thickness: 0.01,
      outerDiameter: 1e-12,
      branchThickness: 0,
      branchLength: 0,
      stress: 110e6,
      branchStress: 110e6,
    });
    const ratio = pressure / ((factor * 110e6 * 0.01) / 0.31);
    // For a sphere the clause's areas differ by (e / 2 r)² of the pressure, on the safe side.
    expect(ratio).toBeLessThanOrEqual(1 + 1e-9);
    expect(ratio).toBeGreaterThan(shape === 'cylinder' ? 1 - 1e-9 : 1 - (0.01 / 0.3) ** 2);
  });

  it('balances the force of the pressure and the force in the metal', () => {
    // The areas added up by hand from the measures above: l_s √(0.31 · 0.01), l_b √(0.055 · 0.005).
    const [ls, lb] = [Math.sqrt(0.0031), Math.sqrt(0.000275)];
    const metal = ls * 0.01 + 0.005 * (lb + 0.01);
    const pressed = 0.15 * (ls + 0.03) + 0.025 * (lb + 0.01);
    expect(at({}).pressurePaGauge).toBeCloseTo((110e6 * metal) / (pressed + metal / 2), 3);
  });

  it('is weakest as a plain hole, falls with its size and never raises the shell', () => {
    expect(at({ branchThicknessM: 0 }).pressurePaGauge).toBeLessThan(at({}).pressurePaGauge);
    fc.assert(
      fc.property(
        fc.constantFrom('cylinder' as const, 'sphere' as const),
        fc.double({ min: 0.001, max: 0.17, noNaN: true }),
        fc.double({ min: 1, max: 1.05, noNaN: true }),
        (shape, branchOuterDiameterM, wider) => {
          const hole = at({ shape, branchOuterDiameterM, branchThicknessM: 0 });
          expect(hole.weakening).toBeLessThanOrEqual(1);
          expect(
            at({ shape, branchOuterDiameterM: branchOuterDiameterM * wider, branchThicknessM: 0 })
              .pressurePaGauge,
          ).toBeLessThanOrEqual(hole.pressurePaGauge);
        },
      ),
    );
    expect(at({ branchThicknessM: 0.029 }).weakening).toBe(1);
  });

  it('counts no stronger branch than the shell, and no longer one than there is', () => {
    expect(at({ branchStressPa: 200e6 }).pressurePaGauge).toBe(at({}).pressurePaGauge);
    expect(at({ branchStressPa: 80e6 }).pressurePaGauge).toBeLessThan(at({}).pressurePaGauge);
    expect(at({ branchLengthM: 0.001 }).pressurePaGauge).toBeLessThan(at({}).pressurePaGauge);
  });

  it.each([
    ['branchOuterDiameterM', { branchOuterDiameterM: 0.301 }],
    ['branchOuterDiameterM', { shape: 'sphere' as const, branchOuterDiameterM: 0.181 }],
    ['branchThicknessM', { branchThicknessM: 0.03 }],
  ])('refuses %s outside its range', (field, change) => {
    expect(evaluate(openingPressure, { ...base, ...change })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field },
    });
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(openingPressure, base);
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual(['l_s', 'l_b', 'P']);
  });
});
