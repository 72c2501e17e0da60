import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { fireHeat } from './fire-heat.js';
import { liquidArea } from './liquid-area.js';
import { omegaCriticalRatioOf, omegaFlowFunctionOf } from './omega-method.js';
import { standardOrifice } from './standard-orifice.js';
import { steamArea } from './steam-area.js';
import { superheatCorrectionOf, superheatTable } from './superheat-correction.js';
import { twoPhaseArea } from './two-phase-area.js';
import { viscosityCorrection } from './viscosity-correction.js';

describe('steam', () => {
  const steam = {
    massFlowKgPerS: 19.3375,
    temperatureK: 593,
    inletPressurePaAbs: 12_236_000,
    dischargeCoefficient: 0.975,
  };
  const areaOf = (change: object): number => {
    const outcome = evaluate(steamArea, { ...steam, ...change });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value.areaM2;
  };

  it.each(['7th', '10th'] as const)('reads the %s edition at its own grid points', (edition) => {
    const table = superheatTable(edition)!;
    for (const row of table.rows) {
      table.temperaturesK.forEach((temperature, column) => {
        expect(superheatCorrectionOf(table, row.pressurePaAbs, temperature)).toBeCloseTo(
          row.factors[column]!,
          12,
        );
      });
    }
  });

  it('interpolates the 7th edition as its own example: 0.7202 at 593 °C and 9.65 bar gauge', () => {
    // fluids 1.3.1, API520_SH docstring: 0.72018 at 593 + 273.15 K, 1066.325 kPa.
    expect(superheatCorrectionOf(superheatTable('7th')!, 1_066_325, 866.15)).toBeCloseTo(0.72018, 4);
  });

  it('names the edition in its steps, and the editions differ by less than 2 % in the example', () => {
    expect(Math.abs(areaOf({ edition: '7th' }) / areaOf({ edition: '10th' }) - 1)).toBeLessThan(0.02);
  });

  it('corrects Napier above 10 339 kPa: 0.9969 at 10 500 kPa', () => {
    // fluids 1.3.1, API520_N docstring. Saturated steam: area ∝ 1/(p K_N).
    const ratio =
      areaOf({ temperatureK: 400, inletPressurePaAbs: 10_500_000 }) /
      areaOf({ temperatureK: 400, inletPressurePaAbs: 10_339_000 });
    expect(10_339 / 10_500 / ratio).toBeCloseTo(0.9969100255, 6);
  });

  it.each([
    ['10th', { inletPressurePaAbs: 22_057_000 }, { inletPressurePaAbs: 22_058_000 }],
    ['10th', { temperatureK: 898.15 }, { temperatureK: 898.2 }],
    ['7th', { inletPressurePaAbs: 20_785_000 }, { inletPressurePaAbs: 20_786_000 }],
    ['7th', { temperatureK: 922 }, { temperatureK: 922.1 }],
  ])('%s edition: holds at the end of its range and refuses beyond', (edition, inside, outside) => {
    expect(areaOf({ edition, ...inside })).toBeGreaterThan(0);
    const outcome = evaluate(steamArea, { ...steam, ...outside, edition: edition as '7th' });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });
});

describe('liquid', () => {
  it('gives the area of API 520 example 5 after its viscosity correction', () => {
    // API 520 example 5, quoted in the fluids documentation: 3122 mm² with K_v 0.982 at Re 4525.
    const correction = evaluate(viscosityCorrection, { reynolds: 4525 });
    if (!correction.ok) throw new Error(correction.error.message);
    const outcome = evaluate(liquidArea, {
      flowM3PerS: 6.814 / 60,
      relativeDensity: 0.9,
      inletPressurePaGauge: 1_896_000,
      backPressurePaGauge: 345_000,
      dischargeCoefficient: 0.65,
      backPressureCorrection: 0.97,
      viscosityCorrection: correction.value.viscosityCorrection,
    });
    expect(outcome.ok && Math.abs(outcome.value.areaM2 / 3122e-6 - 1)).toBeLessThan(3e-3);
  });

  it.each([
    // fluids 1.3.1, tests/test_safety_valve.py
    ['7th', 100, 0.6157445891],
    ['7th', 4525, 0.9639390032],
    ['10th', 4525, 0.9817287137],
  ] as const)('corrects viscosity by the %s edition at Re %d', (edition, reynolds, expected) => {
    const outcome = evaluate(viscosityCorrection, { reynolds, edition });
    expect(outcome.ok && outcome.value.viscosityCorrection).toBeCloseTo(expected, 9);
  });

  it('refuses a back pressure at the inlet pressure', () => {
    const outcome = evaluate(liquidArea, {
      flowM3PerS: 0.1,
      relativeDensity: 1,
      inletPressurePaGauge: 1e5,
      backPressurePaGauge: 1e5,
      dischargeCoefficient: 0.65,
    });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });
});

describe('two-phase flow', () => {
  it('keeps the explicit fit within 1 % of the implicit equation', () => {
    // η² + (ω² − 2ω)(1 − η)² + 2ω² ln η + 2ω² (1 − η) = 0, API 520 annex C (Leung 1986).
    for (let exponent = -2; exponent <= 2; exponent += 0.1) {
      const omega = 10 ** exponent;
      const residual = (eta: number): number =>
        eta ** 2 +
        (omega ** 2 - 2 * omega) * (1 - eta) ** 2 +
        2 * omega ** 2 * Math.log(eta) +
        2 * omega ** 2 * (1 - eta);
      let [low, high] = [1e-9, 1 - 1e-9];
      for (let step = 0; step < 200; step += 1) {
        const middle = (low + high) / 2;
        if (residual(middle) > 0) high = middle;
        else low = middle;
      }
      expect(Math.abs(omegaCriticalRatioOf(omega) / low - 1)).toBeLessThan(0.01);
    }
  });

  it('joins critical and subcritical flow within the accuracy of the fit', () => {
    for (const omega of [0.1, 0.5, 1, 5, 20]) {
      const critical = omegaCriticalRatioOf(omega);
      const joined = omegaFlowFunctionOf(omega, critical * 1.0001) / omegaFlowFunctionOf(omega, critical);
      expect(Math.abs(joined - 1)).toBeLessThan(0.01);
    }
  });

  it('tends to the isothermal gas at ω = 1', () => {
    expect(omegaFlowFunctionOf(1, 0.1)).toBeCloseTo(Math.exp(-0.5), 3);
  });

  it('refuses a mixture that does not expand', () => {
    const outcome = evaluate(twoPhaseArea, {
      massFlowKgPerS: 1,
      inletSpecificVolumeM3PerKg: 0.01,
      specificVolumeAt90PercentM3PerKg: 0.01,
      inletPressurePaAbs: 5e5,
      dischargeCoefficient: 0.85,
    });
    expect(!outcome.ok && outcome.error.field).toBe('specificVolumeAt90PercentM3PerKg');
  });
});

describe('orifices and fire', () => {
  it.each([
    // API 526 effective areas [in²], midstream calculators and fluids 1.3.1.
    ['E', 0.196],
    ['H', 0.785],
    ['J', 1.287],
    ['L', 2.853],
    ['M', 3.6],
    ['N', 4.34],
    ['P', 6.38],
    ['R', 16],
    ['T', 26],
  ])('takes %s for its own area and the next for a hair more', (letter, areaIn2) => {
    const areaM2 = areaIn2 * 0.0254 ** 2;
    const own = evaluate(standardOrifice, { areaM2 });
    expect(own.ok && own.value.letter).toBe(letter);
    const more = evaluate(standardOrifice, { areaM2: areaM2 * 1.0001 });
    expect(more.ok ? more.value.letter : more.error.code).not.toBe(letter);
  });

  it('follows the SI form of the fire formula within 0.2 %', () => {
    // API 521 SI coefficients 43 200 and 70 900 W (from memory, unverified).
    for (const [drainage, coefficient] of [
      ['adequate', 43_200],
      ['inadequate', 70_900],
    ] as const) {
      const outcome = evaluate(fireHeat, { wettedAreaM2: 2.5, environmentFactor: 1, drainage });
      expect(outcome.ok && Math.abs(outcome.value.heatW / (coefficient * 2.5 ** 0.82) - 1)).toBeLessThan(
        2e-3,
      );
    }
  });

  it('grows with the wetted area', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (wettedAreaM2) => {
        const heat = (area: number): number => {
          const outcome = evaluate(fireHeat, {
            wettedAreaM2: area,
            environmentFactor: 1,
            drainage: 'adequate',
          });
          return outcome.ok ? outcome.value.heatW : Number.NaN;
        };
        expect(heat(wettedAreaM2 + 0.1)).toBeGreaterThan(heat(wettedAreaM2));
      }),
    );
  });
});
