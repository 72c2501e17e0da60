import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { requiredWall } from './required-wall.js';
import { roundUpTo } from './round-up.js';
import { sphereThickness } from './sphere-thickness.js';
import { torisphericalPressure } from './torispherical-pressure.js';
import { torisphericalThickness } from './torispherical-thickness.js';

const stress = 100e6;
const pressureOf = (inputs: Record<string, unknown>) =>
  evaluate(torisphericalPressure as Calculation, {
    allowableStressPa: stress,
    jointEfficiency: 0.85,
    ...inputs,
  });
const wallOf = (inputs: Record<string, unknown>) =>
  evaluate(torisphericalThickness as Calculation, {
    allowableStressPa: stress,
    jointEfficiency: 0.85,
    ...inputs,
  });
const refused = (allowed: RegExp) => ({
  ok: false,
  error: { code: 'CALC_OUT_OF_RANGE', allowed: expect.stringMatching(allowed) as string },
});

describe('a torispherical end of R = 500, r = 50 mm by AD 2000', () => {
  const end = { code: 'AD 2000', crownRadiusM: 0.5, knuckleRadiusM: 0.05 };

  it('carries by its knuckle, 4 f v s/(D_a β): 10 mm, β = 1.9 + 0.0325 × 50^0.7', () => {
    const beta = 1.9 + 0.0325 * 50 ** 0.7;
    const evidence = evaluateWithEvidence(torisphericalPressure as Calculation, {
      ...end,
      thicknessM: 0.01,
      allowableStressPa: stress,
      jointEfficiency: 0.85,
    });
    if (!evidence.ok) throw new Error(evidence.error.message);
    expect(
      (evidence.value.outputs['pressurePaGauge'] as number) / ((340e6 * 0.01) / (0.5 * beta)),
    ).toBeCloseTo(1, 12);
    expect(evidence.value.steps).toHaveLength(1);
    expect(stepFaults(evidence.value.steps)).toEqual([]);
  });

  it('carries by its crown where thick, 4 f v s/(2 R + s), D_a = R/0.8 for DIN 28013', () => {
    const thick = pressureOf({ ...end, crownRadiusM: 0.4, knuckleRadiusM: 0.077, thicknessM: 0.04 });
    const [knuckle, crown] = [
      (340e6 * 0.04) / (0.5 * (1.55 + 0.0255 * (0.5 / 0.04) ** 0.625)),
      (340e6 * 0.04) / (0.8 + 0.04),
    ];
    expect(thick.ok && (thick.value['pressurePaGauge'] as number) / Math.min(knuckle, crown)).toBeCloseTo(
      1,
      12,
    );
    expect(crown).toBeLessThan(knuckle);
  });

  it('is 0.001 to 0.1 D_a thick, of a known form', () => {
    for (const thicknessM of [0.0005, 0.05]) expect(pressureOf({ ...end, thicknessM }).ok).toBe(true);
    for (const thicknessM of [0.00049, 0.0501]) {
      expect(pressureOf({ ...end, thicknessM })).toMatchObject(refused(/^0\.0005 to 0\.05 m/u));
    }
    expect(pressureOf({ ...end, knuckleRadiusM: 0.07, thicknessM: 0.01 })).toMatchObject(
      refused(/DIN 28011/u),
    );
    expect(wallOf({ ...end, knuckleRadiusM: 0.07, pressurePaGauge: 1e6 })).toMatchObject(
      refused(/DIN 28011/u),
    );
  });

  it('has at least the least wall, and says what the thickest carries', () => {
    expect(wallOf({ ...end, pressurePaGauge: 1e3 })).toMatchObject({
      ok: true,
      value: { thicknessM: 0.0005 },
    });
    const thickest = pressureOf({ ...end, thicknessM: 0.05 });
    const highest = thickest.ok ? (thickest.value['pressurePaGauge'] as number) : Number.NaN;
    expect(wallOf({ ...end, pressurePaGauge: highest * 0.999 }).ok).toBe(true);
    expect(wallOf({ ...end, pressurePaGauge: highest * 1.001 })).toMatchObject(
      refused(/^at most \d+ Pa for this shape/u),
    );
  });
});

describe('a torispherical end of L = 500, r = 50 mm by ASME VIII-1', () => {
  const end = { code: 'ASME VIII-1', crownRadiusM: 0.5, knuckleRadiusM: 0.05 };
  const M = (3 + Math.sqrt(10)) / 4;

  it('needs P L M/(2 S E − 0.2 P), at least 0.002 L', () => {
    const wall = wallOf({ ...end, pressurePaGauge: 2e6 });
    expect(wall.ok && (wall.value['thicknessM'] as number) / ((2e6 * 0.5 * M) / (170e6 - 0.4e6))).toBeCloseTo(
      1,
      12,
    );
    expect(wallOf({ ...end, pressurePaGauge: 1e3 })).toMatchObject({
      ok: true,
      value: { thicknessM: 0.001 },
    });
  });

  it('is from 0.002 L to r/3 thick', () => {
    for (const thicknessM of [0.00101, 0.0166]) expect(pressureOf({ ...end, thicknessM }).ok).toBe(true);
    expect(pressureOf({ ...end, thicknessM: 0.00099 })).toMatchObject(refused(/\(0\.001 m\)/u));
    expect(pressureOf({ ...end, thicknessM: 0.0167 })).toMatchObject(refused(/\(0\.0166667 m\)/u));
    // r/3 carries 170 × 16.6667/(500 M + 3.3333) = 3.661 MPa. From 10 S E on the formula would turn its sign.
    expect(wallOf({ ...end, pressurePaGauge: 3.66e6 }).ok).toBe(true);
    for (const pressurePaGauge of [3.67e6, 850e6, 900e6]) {
      expect(wallOf({ ...end, pressurePaGauge })).toMatchObject(refused(/a third of the knuckle radius/u));
    }
  });

  it('has a knuckle from 0.06 L to L', () => {
    expect(pressureOf({ ...end, knuckleRadiusM: 0.0301, thicknessM: 0.005 }).ok).toBe(true);
    expect(pressureOf({ ...end, knuckleRadiusM: 0.5, thicknessM: 0.005 }).ok).toBe(true);
    expect(pressureOf({ ...end, knuckleRadiusM: 0.0295, thicknessM: 0.005 })).toMatchObject(
      refused(/0\.03 m/u),
    );
    expect(pressureOf({ ...end, knuckleRadiusM: 0.501, thicknessM: 0.005 })).toMatchObject(
      refused(/0\.5 m/u),
    );
    expect(wallOf({ ...end, knuckleRadiusM: 0.501, pressurePaGauge: 1e6 })).toMatchObject(refused(/0\.5 m/u));
  });
});

it.each([
  // Where each code's last formula for a sphere ends, over f z.
  ['EN 13445-3', 2, 1.999],
  ['ASME VIII-1', 6.001, 6],
  ['AD 2000', 0.3637, 0.3636],
])('a sphere by %s ends at its highest load', (code, above, below) => {
  const wall = (load: number) =>
    evaluate(sphereThickness as Calculation, {
      code,
      innerRadiusM: 0.2,
      allowableStressPa: stress,
      jointEfficiency: 1,
      pressurePaGauge: load * stress,
    });
  expect(wall(below).ok).toBe(true);
  for (const load of [above, 4, 5, 7].filter((one) => one >= above)) {
    expect(wall(load)).toMatchObject(refused(/^up to \d+ Pa at this stress/u));
  }
});

it('a wall is rounded up to its step, within rounding not at all', () => {
  expect(roundUpTo(0.0101, 0.0005)).toBeCloseTo(0.0105, 12);
  expect(roundUpTo(0.01, 0.0005)).toBeCloseTo(0.01, 12);
  expect(roundUpTo(0.01 * (1 + 1e-12), 0.0005)).toBeCloseTo(0.01, 12);
  expect(roundUpTo(0.01 * (1 + 1e-8), 0.0005)).toBeCloseTo(0.0105, 12);
  expect(roundUpTo(1e-13, 1)).toBe(0);
});

it('a required wall has allowances and a joint: 2 MPa on 200 mm at 100 MPa and 0.85', () => {
  const given = {
    code: 'EN 13445-3' as const,
    innerDiameterM: 0.2,
    pressurePaGauge: 2e6,
    allowableStressPa: 100e6,
    jointEfficiency: 0.85,
    corrosionAllowanceM: 0.001,
    thicknessStepM: 0.0005,
  };
  const outcome = evaluate(requiredWall, given);
  if (!outcome.ok) throw new Error(outcome.error.message);
  // P D_i/(2 f z − P) on the corroded bore: 2 × 202/168 = 2.404762 mm; with 1 mm 3.40 mm, so 3.5 mm.
  expect(outcome.value.wallThicknessM).toBeCloseTo(0.0035, 12);
  expect(outcome.value.outerDiameterM).toBeCloseTo(0.207, 12);
  // With 0.2 mm undersize 3.60 mm, so 4 mm.
  const undersize = evaluate(requiredWall, { ...given, toleranceM: 0.0002 });
  expect(undersize.ok && undersize.value.wallThicknessM).toBeCloseTo(0.004, 12);
});
