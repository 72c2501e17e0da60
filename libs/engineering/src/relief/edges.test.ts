import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { gasArea } from './gas-area.js';
import { criticalPressureRatioOf, nozzleMassFlux } from './isentropic-flow.js';
import { liquidArea } from './liquid-area.js';
import { omegaCriticalRatioOf } from './omega-method.js';
import { steamArea } from './steam-area.js';
import { twoPhaseArea } from './two-phase-area.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

const gas = {
  massFlowKgPerS: 1,
  temperatureK: 300,
  compressibilityFactor: 1,
  molarMassKgPerMol: 0.028,
  isentropicExponent: 1.4,
  inletPressurePaAbs: 10e5,
  dischargeCoefficient: 0.9,
};
const liquid = {
  flowM3PerS: 0.01,
  relativeDensity: 1,
  inletPressurePaGauge: 10e5,
  dischargeCoefficient: 0.65,
};
const mixture = {
  massFlowKgPerS: 1,
  inletSpecificVolumeM3PerKg: 0.01,
  specificVolumeAt90PercentM3PerKg: 0.0115,
  inletPressurePaAbs: 10e5,
  dischargeCoefficient: 0.85,
};

describe('correction factors', () => {
  it('each enlarge the area by their reciprocal', () => {
    const halves = { backPressureCorrection: 0.8, combinationFactor: 0.9 };
    expect(
      valueOf(evaluate(gasArea, { ...gas, ...halves })).areaM2 / valueOf(evaluate(gasArea, gas)).areaM2,
    ).toBeCloseTo(1 / 0.72, 12);
    const steam = {
      massFlowKgPerS: 1,
      inletPressurePaAbs: 10e5,
      temperatureK: 460,
      dischargeCoefficient: 0.9,
    };
    expect(
      valueOf(evaluate(steamArea, { ...steam, ...halves })).areaM2 /
        valueOf(evaluate(steamArea, steam)).areaM2,
    ).toBeCloseTo(1 / 0.72, 12);
    expect(
      valueOf(evaluate(liquidArea, { ...liquid, ...halves, viscosityCorrection: 0.5 })).areaM2 /
        valueOf(evaluate(liquidArea, liquid)).areaM2,
    ).toBeCloseTo(1 / 0.36, 12);
    expect(
      valueOf(evaluate(twoPhaseArea, { ...mixture, ...halves })).areaM2 /
        valueOf(evaluate(twoPhaseArea, mixture)).areaM2,
    ).toBeCloseTo(1 / 0.72, 12);
  });
});

describe('the ends of the two-phase range', () => {
  it.each([
    ['at the least expansion', 0.01 * (1 + 0.01 / 9) * (1 + 1e-9), true],
    ['below it', 0.01 * (1 + 0.0099 / 9), false],
    ['at the most', 0.01 * (1 + 100 / 9) * (1 - 1e-9), true],
    ['above it', 0.01 * (1 + 101 / 9), false],
  ])('%s', (_words, specificVolumeAt90PercentM3PerKg, holds) => {
    const outcome = evaluate(twoPhaseArea, { ...mixture, specificVolumeAt90PercentM3PerKg });
    expect(outcome.ok).toBe(holds);
    // 0.01 × (1 + 0.01/9) and 0.01 × (1 + 100/9) m³/kg.
    if (!outcome.ok) expect(outcome.error.allowed).toBe('0.0100111 to 0.121111 m3/kg (0.01 ≤ ω ≤ 100)');
  });

  it.each([10e5, 11e5])('refuses a back pressure of %d Pa on 10 bar', (backPressurePaAbs) => {
    expect(evaluate(twoPhaseArea, { ...mixture, backPressurePaAbs })).toMatchObject({
      ok: false,
      error: { field: 'backPressurePaAbs' },
    });
  });

  it('says whether the flow is critical, against the atmosphere where nothing is given', () => {
    const critical = omegaCriticalRatioOf(9 * 0.15);
    const noteAt = (backPressurePaAbs?: number) =>
      valueOf(
        evaluateWithEvidence(
          twoPhaseArea,
          backPressurePaAbs === undefined ? mixture : { ...mixture, backPressurePaAbs },
        ),
      ).steps;
    expect(noteAt().find(({ symbol }) => symbol === 'η_c')?.note).toBe('critical flow');
    expect(noteAt().find(({ symbol }) => symbol === 'η_c')?.substituted).toContain('ratio 0.101325');
    expect(noteAt(critical * 10e5).find(({ symbol }) => symbol === 'G')?.formula).toBe('η_c √(p_0/(v_0 ω))');
    const above = noteAt(critical * 10.1e5);
    expect(above.find(({ symbol }) => symbol === 'η_c')?.note).toBe('subcritical flow');
    expect(above.find(({ symbol }) => symbol === 'G')?.formula).toContain('ln η_a');
  });
});

it.each([10e5, 10.1e5])('a liquid needs less back pressure than %d Pa on 10 bar', (backPressurePaGauge) => {
  expect(evaluate(liquidArea, { ...liquid, backPressurePaGauge })).toMatchObject({
    ok: false,
    error: { code: 'CALC_OUT_OF_RANGE', field: 'backPressurePaGauge' },
  });
});

it('a nozzle is choked to its critical ratio and not above', () => {
  const at = (ratio: number) =>
    nozzleMassFlux({
      pressurePaAbs: 1e6,
      backPressurePaAbs: ratio * 1e6,
      densityKgPerM3: 10,
      isentropicExponent: 1.4,
    }).choked;
  const critical = criticalPressureRatioOf(1.4);
  expect(critical).toBeCloseTo(0.5283, 4);
  expect([at(critical * 0.999), at(critical * 1.001)]).toEqual([true, false]);
});
