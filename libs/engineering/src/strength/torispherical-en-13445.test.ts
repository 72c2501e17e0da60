import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate, evaluateWithEvidence } from '../calculation.js';
import { redone, stepFaults } from '../redone-by-hand.js';
import { torisphericalPressure } from './torispherical-pressure.js';
import { torisphericalThickness } from './torispherical-thickness.js';
import { vesselRating } from './vessel-rating.js';

// D_e = R = 2000, r = 200 mm, f = 150 MPa, z = 0.85; worked apart from the program on eq. 7.5-1 to 7.5-8 (from memory).
const end = {
  code: 'EN 13445-3',
  outerDiameterM: 2,
  crownRadiusM: 2,
  knuckleRadiusM: 0.2,
  allowableStressPa: 150e6,
  jointEfficiency: 0.85,
};

const shown = (thicknessM: number) => {
  const evidence = evaluateWithEvidence(torisphericalPressure as Calculation, { ...end, thicknessM });
  if (!evidence.ok) throw new Error(evidence.error.message);
  const { outputs, steps } = evidence.value;
  expect(stepFaults(steps)).toEqual([]);
  return {
    pressure: outputs['pressurePaGauge'] as number,
    first: steps[0]?.substituted,
    values: Object.fromEntries(steps.map(({ symbol, value }) => [symbol, value as number])),
  };
};
const ask = (subject: Calculation, change: object) => evaluate(subject, { ...end, ...change });

describe('a torispherical end by EN 13445-3', () => {
  it('is checked against buckling of its knuckle where e ≤ 0.005 D_i', () => {
    const { pressure, values, first } = shown(0.003);
    expect(Object.keys(values)).toEqual([...['Y', 'Z', 'N', 'β_01', 'β_02', 'β'], ...['P_s', 'P_y', 'P_b']]);
    expect(first).toBe('min(0.0015; 0.04)');
    // 2 × 127.5 × 3/(2000 + 1.5); 150 × 3/(β × 1898.8); 111 × 150 (3/1898.8)^1.5 (200/1994)^0.825 MPa.
    expect(values['P_s']! / 382213.34).toBeCloseTo(1, 5);
    expect(values['P_y']! / 210627.327).toBeCloseTo(1, 5);
    expect(values['P_b']! / 156838.897).toBeCloseTo(1, 5);
    expect(pressure).toBe(Math.min(values['P_s']!, values['P_y']!, values['P_b']!));
  });

  it('is not where it is thicker', () => {
    // 0.005 × 1981 = 9.905 mm.
    expect(Object.keys(shown(0.0095).values)).toContain('P_b');
    expect(Object.keys(shown(0.0105).values)).toEqual([
      ...['Y', 'Z', 'N', 'β_01', 'β_02', 'β'],
      ...['P_s', 'P_y'],
    ]);
  });

  it.each([
    [0.14, ['Y', 'Z', 'N', 'β_01', 'β_006', 'β']],
    [0.3, ['Y', 'Z', 'N', 'β_01', 'β_02', 'β']],
    // r / D_i is 0.4 / 1.96, past the last of the three curves.
    [0.4, ['Y', 'Z', 'N', 'β_01', 'β_02', 'β']],
  ])('can be redone with a knuckle of %d m', (knuckleRadiusM, symbols) => {
    const evidence = evaluateWithEvidence(torisphericalPressure as Calculation, {
      ...end,
      knuckleRadiusM,
      thicknessM: 0.02,
    });
    if (!evidence.ok) throw new Error(evidence.error.message);
    const { steps } = evidence.value;
    expect(steps.slice(0, 6).map(({ symbol }) => symbol)).toEqual(symbols);
    expect(stepFaults(steps)).toEqual([]);
    for (const { substituted } of steps) expect(redone(substituted)).toBeTypeOf('number');
  });

  it('has a knuckle from 0.06 to 0.2 D, and a wall from 0.001 D to 0.08 D or r/2', () => {
    const at = (change: object) => ask(torisphericalPressure as Calculation, { thicknessM: 0.02, ...change });
    for (const knuckleRadiusM of [0.12, 0.4]) expect(at({ knuckleRadiusM }).ok).toBe(true);
    for (const knuckleRadiusM of [0.119, 0.401]) {
      expect(at({ knuckleRadiusM })).toMatchObject({
        error: { allowed: '0.06 to 0.2 of the diameter (0.12 to 0.4 m)' },
      });
    }
    for (const thicknessM of [0.00201, 0.0999]) expect(at({ thicknessM }).ok).toBe(true);
    for (const thicknessM of [0.00199, 0.1001]) {
      expect(at({ thicknessM })).toMatchObject({
        error: { allowed: expect.stringMatching(/^0\.002 to 0\.1 m/u) as string },
      });
    }
  });

  it('has at least the least wall, says what the thickest carries, and refuses what has no form', () => {
    const wall = (change: object) => ask(torisphericalThickness as Calculation, change);
    expect(wall({ pressurePaGauge: 1e3 })).toMatchObject({ ok: true, value: { thicknessM: 0.002 } });
    const thickest = shown(0.1).pressure;
    expect(wall({ pressurePaGauge: thickest * 0.999 }).ok).toBe(true);
    expect(wall({ pressurePaGauge: thickest * 1.001 })).toMatchObject({
      error: {
        field: 'pressurePaGauge',
        allowed: expect.stringMatching(/^at most \d+ Pa for this/u) as string,
      },
    });
    expect(wall({ pressurePaGauge: 1e6, crownRadiusM: 2.1 })).toMatchObject({
      error: { field: 'crownRadiusM' },
    });
  });
});

describe('the evidence of a vessel', () => {
  const vessel = {
    code: 'EN 13445-3',
    innerDiameterM: 0.3,
    wallThicknessM: 0.012,
    form: 'torispherical DIN 28013',
    endThicknessM: 0.014,
    allowableStressPa: 112e6,
    jointEfficiency: 0.85,
    corrosionAllowanceM: 0.001,
  };
  const steps = (change: object) => {
    const evidence = evaluateWithEvidence(vesselRating as Calculation, { ...vessel, ...change });
    if (!evidence.ok) throw new Error(evidence.error.message);
    expect(stepFaults(evidence.value.steps)).toEqual([]);
    return new Map(evidence.value.steps.map((step) => [step.symbol, step]));
  };

  it('shows the shell with its joint, and the corroded end', () => {
    // 2 × 112 × 0.85 × 11/(302 + 11) MPa.
    expect((steps({}).get('P_shell')?.value as number) / 6.691374e6).toBeCloseTo(1, 6);
    expect(steps({}).get('P_end')?.substituted).toMatch(/^e = 0\.013 m/u);
    expect(steps({}).has('P_opening')).toBe(false);
    expect(steps({}).has('P_cover')).toBe(false);
  });

  it('shows an opening and a cover where there are', () => {
    const opened = steps({ endOpeningDiameterM: 0.04, endBranchThicknessM: 0.004, coverThicknessM: 0.05 });
    expect(opened.get('P_opening')).toMatchObject({
      formula: 'pressure-area balance at the opening',
      substituted: 'd_eb = 0.04 m, e_b = 0.004 m',
    });
    expect(opened.get('P_cover')).toBeDefined();
    expect(opened.get('PS')?.substituted.split(',')).toHaveLength(3);
    expect(
      steps({ form: 'flat', endThicknessM: 0.04, endOpeningDiameterM: 0.04 }).get('P_opening'),
    ).toMatchObject({
      formula: 'P_end (D_i − d_eb) / D_i',
      substituted: 'd_eb = 0.04 m, e_b = 0 m',
    });
  });

  it('names what the end refuses', () => {
    expect(evaluate(vesselRating as Calculation, { ...vessel, endOpeningDiameterM: 0.2 })).toMatchObject({
      error: { field: 'endOpeningDiameterM' },
    });
  });
});
