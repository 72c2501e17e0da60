import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { discWindow } from './disc-window.js';
import { gasArea } from './gas-area.js';
import { liquidArea } from './liquid-area.js';
import { worstInflow } from './worst-inflow.js';

const psi = 6894.757293168;

const vapour = {
  heatOfVaporisationJPerKg: 8e5,
  vapourMolarMassKgPerMol: 0.046,
  vapourIsentropicExponent: 1.13,
  relievingTemperatureK: 450,
};
const expansion = {
  heatInputW: 3000,
  liquidExpansionPerK: 1.1e-3,
  liquidHeatCapacityJPerKgK: 2400,
  liquidDensityKgPerM3: 790,
};
const found = (inputs: object) => {
  const evidence = evaluateWithEvidence(worstInflow, { relievingPressurePaAbs: 61e5, ...inputs });
  if (!evidence.ok) throw new Error(evidence.error.message);
  return {
    ...(evidence.value.outputs as {
      readonly areaM2: number;
      readonly notComputed: readonly { readonly scenario: string; readonly missing: readonly string[] }[];
    }),
    steps: evidence.value.steps,
  };
};
const missing = (scenario: string, inputs: object) =>
  found({ ...inputs }).notComputed.find((one) => one.scenario === scenario)?.missing;

describe('a scenario with one input too few', () => {
  it.each(Object.keys(vapour))('of vapour asks for %s', (field) => {
    const without = { ...vapour, ...expansion, heaterPowerW: 6000, wettedAreaM2: 0.4, [field]: undefined };
    expect(missing('fire', without)).toEqual([field]);
    expect(missing('heater runaway', without)).toEqual([field]);
  });

  it.each(Object.keys(expansion))('of expansion asks for %s', (field) => {
    const without = { ...vapour, heaterPowerW: 6000, ...expansion, [field]: undefined };
    expect(missing('thermal expansion', without)).toEqual([field]);
  });
});

describe('the area of a scenario', () => {
  it.each([undefined, 40e5])('of a heater is that of its vapour against %d Pa', (backPressurePaAbs) => {
    const back = backPressurePaAbs === undefined ? {} : { backPressurePaAbs };
    const { areaM2, steps } = found({ ...vapour, heaterPowerW: 6000, ...back });
    const direct = evaluate(gasArea, {
      massFlowKgPerS: 6000 / 8e5,
      temperatureK: 450,
      compressibilityFactor: 1,
      molarMassKgPerMol: 0.046,
      isentropicExponent: 1.13,
      inletPressurePaAbs: 61e5,
      dischargeCoefficient: 0.62,
      ...back,
    });
    expect(direct.ok && areaM2 / direct.value.areaM2).toBeCloseTo(1, 12);
    expect(steps.find(({ symbol }) => symbol === 'W_h')?.formula).toBe('P / h_v');
  });

  it('of a fire grows from the heat of the fire', () => {
    const { steps } = found({ ...vapour, wettedAreaM2: 0.4 });
    expect(steps.find(({ symbol }) => symbol === 'W_f')?.formula).toBe('Q_f / h_v');
  });

  it.each([undefined, 5e5])('of expansion is that of its liquid against %d Pa', (backPressurePaAbs) => {
    const back = backPressurePaAbs === undefined ? {} : { backPressurePaAbs };
    const { areaM2 } = found({ ...expansion, ...back });
    // β Q/(ρ c) = 0.0011 × 3000/(790 × 2400) m³/s; water of 999 kg/m³.
    const direct = evaluate(liquidArea, {
      flowM3PerS: (1.1e-3 * 3000) / (790 * 2400),
      relativeDensity: 790 / 999,
      inletPressurePaGauge: 61e5 - 101_325,
      backPressurePaGauge: (backPressurePaAbs ?? 101_325) - 101_325,
      dischargeCoefficient: 0.62,
    });
    expect(direct.ok && areaM2 / direct.value.areaM2).toBeCloseTo(1, 12);
  });
});

describe('the burst tolerance of UG-127: 5 %, but at least 2 psi', () => {
  const window = (maxAllowablePressurePaGauge: number, range = 0) =>
    evaluate(discWindow, {
      maxAllowablePressurePaGauge,
      operatingPressurePaGauge: 0.4 * maxAllowablePressurePaGauge,
      operatingRatio: 0.7,
      manufacturingRangePlus: range,
      manufacturingRangeMinus: range,
    });

  it.each([
    // 2 psi is 5 % of a stamped pressure of 40 psi, so of PS = 42 psi.
    [42.1 * psi, 0, 0.05],
    // Below, the highest stamped pressure is PS − 2 psi.
    [41.9 * psi, 0, 2 / 39.9],
    [100e3, 0, (2 * psi) / (100e3 - 2 * psi)],
    // With a range of ± 5 % the lowest stamped pressure, 0.95/1.05 of the highest, decides.
    [100e3, 0.05, ((2 * 1.05) / 0.95) * (psi / (100e3 - ((2 * 1.05) / 0.95) * psi))],
  ])('PS = %d Pa, range %d', (allowable, range, expected) => {
    const outcome = window(allowable, range);
    expect(outcome.ok && outcome.value.burstTolerance / expected).toBeCloseTo(1, 9);
    const highest = outcome.ok ? outcome.value.maxBurstPressurePaGauge : Number.NaN;
    expect(highest).toBeLessThanOrEqual(allowable * (1 + 1e-12));
  });

  it('is refused where it would pass half of the stamped pressure', () => {
    expect(window(8.1 * psi, 0.2)).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'maxAllowablePressurePaGauge' },
    });
  });

  it('shows tolerance, window and need in its steps', () => {
    const evidence = evaluateWithEvidence(discWindow, {
      maxAllowablePressurePaGauge: 6e6,
      operatingPressurePaGauge: 4e6,
      operatingRatio: 0.8,
      manufacturingRangePlus: 0.05,
      manufacturingRangeMinus: 0.05,
    });
    if (!evidence.ok) throw new Error(evidence.error.message);
    const symbols = evidence.value.steps.map(({ symbol }) => symbol);
    expect(symbols[0]).toBe('t');
    expect(symbols.at(-1)).toBe('p_op,max');
    expect(symbols.length).toBeGreaterThan(5);
  });
});
