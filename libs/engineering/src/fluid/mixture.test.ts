import { expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { boilingTemperature } from './boiling-temperature.js';
import { heatOfVaporisation } from './heat-of-vaporisation.js';
import { mixture } from './mixture.js';

it('a mixture of one part is that part', () => {
  const outcome = evaluate(mixture, {
    components: [{ substance: 'toluene', massFraction: 1 }],
    temperatureK: 373.15,
  });
  if (!outcome.ok) throw new Error(outcome.error.message);
  // Vapour pressure of toluene at 100 °C by the reference equation: 74.2 kPa.
  expect(outcome.value.vapourPressureIdealPaAbs / 1000).toBeCloseTo(74.2, 0);
  expect(outcome.value.vapourPressureUpperBoundPaAbs).toBe(outcome.value.vapourPressureIdealPaAbs);
});

it('benzene and toluene, half and half by moles at 100 °C, follow Raoult', () => {
  // 180.2 and 74.2 kPa by the reference equations: (180.2 + 74.2)/2 = 127.2 kPa.
  const w = 78.11 / (78.11 + 92.14);
  const outcome = evaluate(mixture, {
    components: [
      { substance: 'benzene', massFraction: w },
      { substance: 'toluene', massFraction: 1 - w },
    ],
    temperatureK: 373.15,
  });
  if (!outcome.ok) throw new Error(outcome.error.message);
  expect(outcome.value.vapourPressureIdealPaAbs / 1000).toBeCloseTo(127.2, 0);
  expect(outcome.value.vapourPressureUpperBoundPaAbs / 1000).toBeCloseTo(254.4, 0);
});

it('mass fractions must come to 1', () => {
  expect(
    evaluate(mixture, { components: [{ substance: 'toluene', massFraction: 0.9 }], temperatureK: 373.15 }),
  ).toMatchObject({ ok: false, error: { code: 'CALC_INVALID_INPUT', field: 'components' } });
});

it.each([
  ['water', 101325, 373.124],
  ['methanol', 101325, 337.65],
  ['toluene', 101325, 383.75],
  ['ammonia', 101325, 239.82],
])('%s boils at %d Pa at the temperature of the CRC Handbook', (substance, pressurePaAbs, expected) => {
  const outcome = evaluate(boilingTemperature, { substance, pressurePaAbs });
  expect(outcome.ok && Math.abs(outcome.value.temperatureK - expected)).toBeLessThan(0.15);
});

it('nothing boils above the critical pressure', () => {
  expect(evaluate(boilingTemperature, { substance: 'water', pressurePaAbs: 3e7 })).toMatchObject({
    ok: false,
    error: { code: 'CALC_OUT_OF_RANGE', field: 'pressurePaAbs' },
  });
});

it('the heat of vaporisation of water meets the steam tables and vanishes at the critical point', () => {
  const heat = (temperatureK: number) => {
    const outcome = evaluate(heatOfVaporisation, { substance: 'water', temperatureK });
    return outcome.ok ? outcome.value.heatJPerKg / 1000 : undefined;
  };
  // IAPWS-IF97: 2441.7 at 25 °C, 2256.5 at 100 °C, 1939.8 at 200 °C, 1404.8 kJ/kg at 300 °C.
  expect(heat(298.15)! / 2441.7).toBeCloseTo(1, 2);
  expect(heat(373.15)! / 2256.5).toBeCloseTo(1, 2);
  expect(heat(473.15)! / 1939.8).toBeCloseTo(1, 1);
  expect(heat(573.15)! / 1404.8).toBeCloseTo(1, 1);
  expect(heat(647.13)).toBeLessThan(100);
});

it('acetic acid, whose vapour associates, has values between the tabulated ones only', () => {
  expect(evaluate(heatOfVaporisation, { substance: 'acetic acid', temperatureK: 420 })).toMatchObject({
    ok: false,
    error: { code: 'CALC_OUT_OF_RANGE' },
  });
});
