import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { externalPressureCylinder } from './external-pressure-cylinder.js';
import { externalPressureEllipsoidalEnd } from './external-pressure-ellipsoidal-end.js';

/** Outputs and the value of each step; the steps are redone. */
const shown = (subject: Calculation, inputs: Record<string, unknown>) => {
  const evidence = evaluateWithEvidence(subject, inputs);
  if (!evidence.ok) throw new Error(evidence.error.message);
  const { outputs, steps } = evidence.value;
  expect(stepFaults(steps)).toEqual([]);
  return { outputs, steps, values: Object.fromEntries(steps.map(({ symbol, value }) => [symbol, value])) };
};
const near = (value: unknown, expected: number): void => {
  expect((value as number) / expected).toBeCloseTo(1, 5);
};

describe('a cylinder of 500 × 10 mm, 600 mm long, under pressure from outside by EN 13445-3', () => {
  const cylinder = {
    code: 'EN 13445-3',
    outerDiameterM: 0.5,
    thicknessM: 0.01,
    unsupportedLengthM: 0.6,
    elasticModulusPa: 190e9,
    elasticLimitPa: 120e6,
  };

  it('is thick enough that yielding of the bore counts: 120 (500² − 480²)/(2 × 500²) = 4.704 MPa', () => {
    const { outputs, steps, values } = shown(externalPressureCylinder, cylinder);
    expect(steps.map(({ symbol }) => symbol)).toEqual(['R', 'P_y', 'Z', 'ε', 'P_m', 'k', 'P_r', 'P']);
    near(values['P_y'], 4.704e6);
    // Four lobes, ε = 0.003221208: 190 000 × 10 × ε/245.
    near(values['P_m'], 24.980798e6);
    near(values['ε'], 0.003221208);
    expect(steps[3]?.note).toContain('n = 4');
    // Between the points 5.25 and 5.5 of the curve at P_m/P_y = 5.3105: 0.91795.
    near(values['P_r'], 4.318051e6);
    expect(steps[5]?.substituted).toContain('curve(5.31054)');
    near(values['k'], 0.91795);
    near(outputs['pressurePa'], 4.318051e6 / 1.5);
    near(
      shown(externalPressureCylinder, { ...cylinder, safetyFactor: 2 }).outputs['pressurePa'],
      4.318051e6 / 2,
    );
  });

  it('buckles in five lobes at 3 mm', () => {
    const { values } = shown(externalPressureCylinder, { ...cylinder, thicknessM: 0.003 });
    near(values['P_y'], 1.43136e6);
    near(values['P_m'], 1.1847087e6);
    near(values['P_r'], 0.592132e6);
  });

  it.each([0.25, 0.3])('has a bore, so no wall of %d m', (thicknessM) => {
    expect(evaluate(externalPressureCylinder as Calculation, { ...cylinder, thicknessM })).toMatchObject({
      ok: false,
      error: { field: 'thicknessM', allowed: 'less than half of outerDiameterM (0.25 m)' },
    });
  });

  it('is not rated by the factor B of ASME', () => {
    const { outputs } = shown(externalPressureCylinder, { ...cylinder, factorBPa: 1e6 });
    near(outputs['pressurePa'], 4.318051e6 / 1.5);
  });
});

describe('a cylinder of D_o/t = 5 by UG-28(c)(2)', () => {
  const cylinder = { code: 'ASME VIII-1', outerDiameterM: 0.5, thicknessM: 0.1, factorBPa: 50e6 };

  it.each([
    // (2.167/5 − 0.0833) × 50 MPa = 17.505 MPa.
    ['the factor B', 100e6, 17.505e6],
    // 2 × 40/5 × (1 − 1/5) = 12.8 MPa.
    ['the stress', 40e6, 12.8e6],
  ])('is limited by %s', (_words, externalStressPa, expected) => {
    const { outputs, steps } = shown(externalPressureCylinder, { ...cylinder, externalStressPa });
    near(outputs['pressurePa'], expected);
    expect(steps[0]?.note).toContain('D_o/t < 10');
  });

  it('is a thin one from D_o/t = 10 on: 4 B/(3 D_o/t)', () => {
    const { outputs, steps } = shown(externalPressureCylinder, { ...cylinder, thicknessM: 0.05 });
    near(outputs['pressurePa'], (4 * 50e6) / 30);
    expect(steps[0]?.note).toBe('UG-28(c)(1)');
  });
});

describe('an ellipsoidal end of D_e = 400 mm, 100 mm high, 6 mm thick', () => {
  const end = {
    code: 'EN 13445-3',
    outerDiameterM: 0.4,
    outsideHeightM: 0.1,
    thicknessM: 0.006,
    elasticModulusPa: 200e9,
    elasticLimitPa: 160e6,
    safetyFactor: 1.5,
  };

  it('is a sphere of 400 mm', () => {
    const { outputs, steps, values } = shown(externalPressureEllipsoidalEnd, end);
    expect(steps.map(({ symbol }) => symbol)).toEqual(['R', 'P_y', 'P_m', 'k', 'P_r', 'P']);
    near(values['R'], 0.4);
    // 2 × 160 × 6/400; 1.21 × 200 000 × 36/160 000; past the end of the curve 0.57.
    near(values['P_y'], 4.8e6);
    near(values['P_m'], 54.45e6);
    near(values['P_r'], 2.736e6);
    expect(steps[3]?.substituted).toContain('curve(11.3437)');
    near(outputs['allowablePressurePa'], 1.824e6);
  });

  it('is as high as 0.15 to 0.5 of its diameter, and at most 0.16 R thick', () => {
    const of = (change: object) =>
      evaluate(externalPressureEllipsoidalEnd as Calculation, { ...end, ...change });
    for (const outsideHeightM of [0.0601, 0.2]) expect(of({ outsideHeightM }).ok).toBe(true);
    for (const outsideHeightM of [0.0599, 0.2001]) {
      expect(of({ outsideHeightM })).toMatchObject({
        error: { allowed: '0.06 to 0.2 m (0.15 to 0.5 of the outer diameter)' },
      });
    }
    expect(of({ thicknessM: 0.0639 }).ok).toBe(true);
    expect(of({ thicknessM: 0.0641 })).toMatchObject({ error: { allowed: 'at most 0.064 m (0.16 R)' } });
  });
});
