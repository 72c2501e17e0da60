import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { type EndForm, endForms } from '../geometry/end-form.js';
import { stepFaults } from '../redone-by-hand.js';
import { collapseRatio } from './collapse-curve.js';
import { externalPressureCylinder } from './external-pressure-cylinder.js';
import { vesselExternalRating } from './vessel-external-rating.js';

// Corroded by 1 mm: bore 402, shell 5, end 7 mm; E 190 GPa, σ_e 120 MPa, safety factor 2.
const [E, yieldStress, safety] = [190e9, 120e6, 2];
const vessel = {
  innerDiameterM: 0.4,
  cylinderLengthM: 0.5,
  wallThicknessM: 0.006,
  endThicknessM: 0.008,
  corrosionAllowanceM: 0.001,
  elasticModulusPa: E,
  elasticLimitPa: yieldStress,
  safetyFactor: safety,
  coneHalfAngleDeg: 30,
};

const rated = (form: EndForm, change: object = {}) => {
  const outcome = evaluate(vesselExternalRating, { ...vessel, form, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

/** A sphere of the outer crown radius, EN 13445-3 8.7: P_y = 2 σ_e e/R, P_m = 1.21 E e²/R². */
const sphere = (R: number, e: number): number => {
  const [P_y, P_m] = [(2 * yieldStress * e) / R, (1.21 * E * e * e) / (R * R)];
  return (P_y * collapseRatio('dishedEnd', P_m / P_y)) / safety;
};
const cylinder = (outerDiameterM: number, thicknessM: number, unsupportedLengthM: number): number => {
  const outcome = evaluate(externalPressureCylinder, {
    code: 'EN 13445-3',
    outerDiameterM,
    thicknessM,
    unsupportedLengthM,
    elasticModulusPa: E,
    elasticLimitPa: yieldStress,
    safetyFactor: safety,
  });
  return outcome.ok ? outcome.value.pressurePa : Number.NaN;
};

describe('under pressure from outside', () => {
  it.each<[EndForm, number]>([
    ['hemispherical', sphere((0.402 + 0.007) / 2, 0.007)],
    // R = D_e²/(4 h) of the outer ellipse, D_e = 416 and h = 107.5 mm.
    ['2:1 ellipsoidal', sphere(0.416 ** 2 / (4 * 0.1075), 0.007)],
    // Inner radius of the standard on D_a = 416 mm, 1 mm of corrosion and the wall on top.
    ['torispherical DIN 28011', sphere(0.416 + 0.001 + 0.007, 0.007)],
    ['torispherical DIN 28013', sphere(0.8 * 0.416 + 0.001 + 0.007, 0.007)],
    // σ_e/S (e/(0.41 D))².
    ['flat', (yieldStress / safety) * (0.007 / (0.41 * 0.402)) ** 2],
    // A cylinder of the radius R/cos α over the slant length R/sin α.
    ['conical', cylinder(0.402 / Math.cos(Math.PI / 6) + 0.014, 0.007, 0.201 / 0.5)],
  ])('a %s end carries what its sphere, plate or cone carries', (form, expected) => {
    expect(rated(form).endPressurePa / expected).toBeCloseTo(1, 9);
  });

  it.each<[EndForm, number]>([
    ['flat', 0.5],
    ['conical', 0.5],
    ['hemispherical', 0.5 + 0.4 * 0.2],
    ['2:1 ellipsoidal', 0.5 + 0.4 * 0.1],
  ])('a shell with a %s end is %d m long between stiff ends', (form, length) => {
    const { shellPressurePa } = rated(form);
    expect((shellPressurePa ?? 0) / cylinder(0.412, 0.005, length)).toBeCloseTo(1, 9);
  });

  it('the weaker part limits, and a flat end without cylinder stands alone', () => {
    const thinShell = rated('hemispherical', { wallThicknessM: 0.003 });
    expect(thinShell.limitingPart).toBe('shell');
    expect(thinShell.allowablePressurePa).toBe(thinShell.shellPressurePa);
    const flat = rated('flat', { endThicknessM: 0.003 });
    expect(flat.limitingPart).toBe('end');
    expect(flat.allowablePressurePa).toBe(flat.endPressurePa);
    const disc = rated('flat', { cylinderLengthM: 0 });
    expect(disc.shellPressurePa).toBeUndefined();
    expect(disc.allowablePressurePa).toBe(disc.endPressurePa);
    const evidence = evaluateWithEvidence(vesselExternalRating, {
      ...vessel,
      form: 'flat',
      cylinderLengthM: 0,
    });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual(['P_end', 'p_d']);
  });

  it.each(endForms)('can be redone from its steps: %s', (form) => {
    const evidence = evaluateWithEvidence(vesselExternalRating, { ...vessel, form });
    if (!evidence.ok) throw new Error(evidence.error.message);
    const { steps, outputs } = evidence.value;
    expect(stepFaults(steps)).toEqual([]);
    const last = (name: string) => steps.findLast(({ symbol }) => symbol === name)?.value;
    expect(last('P_shell')).toBe(outputs['shellPressurePa']);
    expect(last('P_end')).toBe(outputs['endPressurePa']);
  });

  it('a plate thicker than wide counts as one as thick as wide', () => {
    expect(rated('flat', { endThicknessM: 0.9 }).endPressurePa).toBeCloseTo(
      yieldStress / safety / 0.41 ** 2,
      3,
    );
  });

  it('demand is jacket and vacuum together, and never below zero', () => {
    const { demandPressurePa, utilisation, allowablePressurePa } = rated('hemispherical', {
      jacketPressurePaGauge: 2e5,
      innerPressurePaAbs: 5e4,
    });
    expect(demandPressurePa).toBeCloseTo(251_325, 6);
    expect(utilisation).toBeCloseTo(251_325 / allowablePressurePa, 12);
    expect(rated('hemispherical', { innerPressurePaAbs: 5e5 }).demandPressurePa).toBe(0);
  });

  it.each([
    ['wallThicknessM', { wallThicknessM: 0.001 }],
    ['endThicknessM', { endThicknessM: 0.001 }],
  ])('%s is more than the corrosion allowance', (field, change) => {
    expect(evaluate(vesselExternalRating, { ...vessel, form: 'flat', ...change })).toMatchObject({
      ok: false,
      error: { field, allowed: 'more than the corrosion allowance (0.001 m)' },
    });
  });

  it('a cone needs its angle', () => {
    const { coneHalfAngleDeg: _angle, ...without } = vessel;
    expect(evaluate(vesselExternalRating, { ...without, form: 'conical' })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'coneHalfAngleDeg' },
    });
  });
});
