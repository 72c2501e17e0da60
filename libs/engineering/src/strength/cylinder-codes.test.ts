import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { cylinderPressure } from './cylinder-pressure.js';
import { cylinderThickness } from './cylinder-thickness.js';
import { knuckleFactor } from './knuckle-factor.js';
import type { PressureCode } from './pressure-fields.js';

// A bore of 400 mm at 120 MPa.
const shell = { innerRadiusM: 0.2, allowableStressPa: 120e6, jointEfficiency: 1 };

const wallFor = (code: PressureCode, pressurePaGauge: number) =>
  evaluate(cylinderThickness, { ...shell, code, pressurePaGauge });
const wall = (code: PressureCode, pressurePaGauge: number): number => {
  const outcome = wallFor(code, pressurePaGauge);
  return outcome.ok ? outcome.value.thicknessM : Number.NaN;
};
const pressure = (code: PressureCode, thicknessM: number) => {
  const evidence = evaluateWithEvidence(cylinderPressure, { ...shell, code, thicknessM });
  if (!evidence.ok) throw new Error(evidence.error.message);
  const [step] = evidence.value.steps;
  expect(stepFaults(evidence.value.steps)).toEqual([]);
  return { value: evidence.value.outputs['pressurePaGauge'] as number, note: step?.note };
};

describe('a cylinder by AD 2000', () => {
  it('of D_a/D_i = 1.4 carries 2.3 f e/(D_i + 3 e) by B10, and needs that wall for it', () => {
    // 2.3 × 120 × 80/(400 + 240) = 34.5 MPa.
    expect(pressure('AD 2000', 0.08).value / 34.5e6).toBeCloseTo(1, 12);
    expect(wall('AD 2000', 34.5e6)).toBeCloseTo(0.08, 12);
  });

  it('just above D_a/D_i = 1.2 carries what B1 allows there: 2 × 120 × 40/440 MPa', () => {
    const { value, note } = pressure('AD 2000', 0.041);
    expect(value / ((2 * 120e6 * 40) / 440)).toBeCloseTo(1, 12);
    expect(note).toContain('held at the end of B1');
  });

  it('ends at D_a/D_i = 1.5, which carries 2.3 × 120 × 100/700 MPa', () => {
    const highest = (2.3 * 120e6 * 100) / 700;
    expect(wall('AD 2000', highest)).toBeCloseTo(0.1, 12);
    for (const load of [1.0001, 2 * 3.05, 3 * 3.05]) {
      expect(wallFor('AD 2000', highest * load)).toMatchObject({
        ok: false,
        error: {
          field: 'pressurePaGauge',
          allowed: expect.stringMatching(
            /^up to 39428600 Pa at this stress by AD 2000; AD 2000 B10 ends/u,
          ) as string,
        },
      });
    }
    expect(evaluate(cylinderPressure, { ...shell, code: 'AD 2000', thicknessM: 0.1001 })).toMatchObject({
      ok: false,
      error: { allowed: expect.stringMatching(/^up to 0.1 m at this bore by AD 2000/u) as string },
    });
  });
});

describe('a cylinder by ASME VIII-1', () => {
  it('goes over to appendix 1-2 at 0.385 S E, and never below half of the radius', () => {
    expect(wall('ASME VIII-1', 0.38 * 120e6)).toBeCloseTo((0.2 * 0.38) / (1 - 0.6 * 0.38), 12);
    expect(wall('ASME VIII-1', 0.39 * 120e6)).toBeCloseTo(0.1, 12);
    expect(wall('ASME VIII-1', 0.41 * 120e6)).toBeCloseTo(0.2 * (Math.exp(0.41) - 1), 12);
  });

  it('ends at three times the stress', () => {
    expect(wall('ASME VIII-1', 360e6)).toBeCloseTo(0.2 * (Math.exp(3) - 1), 9);
    expect(wallFor('ASME VIII-1', 361e6)).toMatchObject({
      ok: false,
      error: { allowed: expect.stringMatching(/^up to 360000000 Pa at this stress/u) as string },
    });
  });
});

describe('a cylinder by EN 13445-3', () => {
  it('just above e/D_e = 0.16 carries what 7.4.2 allows there: 0.32/0.84 f', () => {
    // D_e = 400/(1 − 2 × 0.161) mm.
    const { value, note } = pressure('EN 13445-3', (0.161 * 0.4) / (1 - 0.322));
    expect(value / ((0.32 / 0.84) * 120e6)).toBeCloseTo(1, 12);
    expect(note).toContain('held at the end of clause 7.4.2');
  });

  it('carries by Lamé above: (2² − 1)/(2² + 1) of the stress at D_e = 2 D_i', () => {
    expect(pressure('EN 13445-3', 0.2).value / (0.6 * 120e6)).toBeCloseTo(1, 12);
    expect(wall('EN 13445-3', 72e6)).toBeCloseTo(0.2, 12);
  });

  it('has no wall at the stress', () => {
    expect(wallFor('EN 13445-3', 120e6)).toMatchObject({
      ok: false,
      error: {
        allowed: expect.stringMatching(/^up to 120000000 Pa at this stress by EN 13445-3/u) as string,
      },
    });
  });
});

// Worked apart from the program on eq. 7.5-9 to 7.5-18 (from memory): the coding is checked, not the rule.
it.each([
  [0.01, 0.06, 1.067869],
  [0.01, 0.08, 0.936138],
  [0.01, 0.1, 0.804407],
  [0.02, 0.15, 0.598244],
  [0.005, 0.2, 0.520826],
  [0.05, 0.1, 0.556115],
])('the knuckle factor at e/R = %d and r/D_i = %d is %d', (thickness, knuckle, expected) => {
  expect(knuckleFactor(thickness, knuckle)).toBeCloseTo(expected, 6);
});
