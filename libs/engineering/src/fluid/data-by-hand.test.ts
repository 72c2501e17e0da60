import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { type Correlation, correlationValue, describeCorrelation } from './correlation.js';
import { heatOfVaporisation } from './heat-of-vaporisation.js';
import { hotVolume } from './hot-volume.js';
import { findLiquid } from './liquid.js';
import { liquidFullFraction } from './liquid-full-fraction.js';
import { liquidFullPressureRise } from './liquid-full-pressure-rise.js';
import { liquidHeatCapacity } from './liquid-heat-capacity.js';
import { mixture } from './mixture.js';
import { fluidProperties } from './properties.js';
import { totalPressure } from './total-pressure.js';
import { vapourPressure } from './vapour-pressure.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('the forms of correlation', () => {
  it.each([
    // C1²/t + C2 − 2 C1 C3 t − C1 C4 t² − C3² t³/3 − C3 C4 t⁴/2 − C4² t⁵/5 with the constants of methane, worked apart
    // [J/(kmol·K)]; at the boiling point the steam tables of the trade print 3.48 kJ/(kg·K).
    [111.67, 3507.3023500840513],
    [150, 4018.676925720087],
    [180, 7387.847885373543],
  ])('give the heat capacity of liquid methane at %d K', (temperatureK, expected) => {
    const { heatCapacityJPerKgK } = valueOf(
      evaluate(liquidHeatCapacity, { substance: 'methane', temperatureK }),
    );
    expect(heatCapacityJPerKgK / expected).toBeCloseTo(1, 9);
  });

  it('keep no more of exp(C1 + C2/T + C3 ln T + C4 T^C5) than is there', () => {
    const row = { model: 'dippr101', c1: 1, c2: -300, c3: 0.5, c4: 0, c5: 2 } as Correlation;
    expect(correlationValue(row, 300)).toBeCloseTo(Math.sqrt(300), 9);
    expect(correlationValue({ ...row, c4: 1e-6 } as Correlation, 300)).toBeCloseTo(
      Math.sqrt(300) * Math.exp(0.09),
      9,
    );
  });

  it('are shown with their constants, without the limits of the row', () => {
    const shown = describeCorrelation(
      {
        model: 'polynomial',
        coefficients: [1, 2],
        minTemperatureK: 200,
        maxTemperatureK: 400,
      } as Correlation,
      300,
    );
    expect(shown.substituted).toBe('T = 300 K, coefficients = 1, 2');
  });
});

describe('heat of vaporisation', () => {
  const heat = (substance: string, temperatureK: number) =>
    evaluate(heatOfVaporisation, { substance, temperatureK });

  it('passes through both tabulated values of toluene, with the exponent that they give', () => {
    // CRC Handbook: 38.01 kJ/mol at 298.15 K, 33.18 at 383.78 K; n = ln(38010/33180)/ln(293.6/207.97) = 0.394 119
    expect(valueOf(heat('toluene', 298.15)).heatJPerKg).toBeCloseTo(38_010 / 0.09213842, 3);
    expect(valueOf(heat('toluene', 383.78)).heatJPerKg).toBeCloseTo(33_180 / 0.09213842, 3);
    expect(valueOf(heat('toluene', 450)).heatJPerKg / 309_616.12052).toBeCloseTo(1, 9);
  });

  it('goes by Watson, 0.38, where one value is tabulated', () => {
    // 8190 ((190.564 − 150)/(190.564 − 111.67))^0.38 / 0.016 042 46
    expect(valueOf(heat('methane', 150)).heatJPerKg / 396_487.70091).toBeCloseTo(1, 9);
  });

  it.each([
    ['toluene', 178.15, true],
    ['toluene', 178, false],
    ['toluene', 591.75, true],
    ['toluene', 592, false],
    // Associating vapour: half a kelvin beyond the tabulated values, not more.
    ['acetic acid', 297.7, true],
    ['acetic acid', 297.6, false],
  ] as const)('of %s at %d K exists: %s', (substance, temperatureK, exists) => {
    const outcome = heat(substance, temperatureK);
    expect(outcome.ok).toBe(exists);
    expect(outcome.ok || outcome.error.field).toBe(exists ? true : 'temperatureK');
  });
});

describe('properties past their data', () => {
  const of = (temperatureK: number) =>
    valueOf(evaluate(fluidProperties, { substance: 'toluene', temperatureK }));

  it('follow ln μ straight over 1/T with the last slope', () => {
    // μ(383.78 K) = 0.242 789 mPa·s, slope of the last 5 K: 0.166 900 mPa·s at 430 K, worked apart
    expect((of(430).viscosityPaS ?? 0) / 1.6689991145691242e-4).toBeCloseTo(1, 9);
  });

  it('follow ((T_c − T_e)/(T_c − T))^0.28 in heat capacity', () => {
    // c(500 K) = 2580.25 J/(kg·K), T_c 591.75 K
    expect((of(540).heatCapacityJPerKgK ?? 0) / 3028.9792553773536).toBeCloseTo(1, 9);
  });

  it('end at 0.95 of the critical temperature', () => {
    expect(of(562).heatCapacityJPerKgK).toBeDefined();
    expect(of(562.5).heatCapacityJPerKgK).toBeUndefined();
    expect(of(562.5).missing).toContain('heatCapacityJPerKgK');
  });
});

describe('vapour over a solution', () => {
  const over = (solute: string, massFraction: number, temperatureK = 330) =>
    valueOf(evaluate(totalPressure, { solute, massFraction, temperatureK, statedPressurePaAbs: 50e5 }));
  const pure = (substance: string, temperatureK = 330) =>
    valueOf(evaluate(vapourPressure, { substance, temperatureK })).pressurePaAbs;

  it('of ammonia is bounded by Raoult', () => {
    // x = (0.25/17.0368)/(0.25/17.0368 + 0.75/18.01528)
    const x = 0.25 / 17.0368 / (0.25 / 17.0368 + 0.75 / 18.01528);
    const bound = x * pure('ammonia') + (1 - x) * pure('water');
    expect(over('ammonia', 0.25).vapourPressurePaAbs / bound).toBeCloseTo(1, 9);
  });

  it('of formic acid is bounded by the higher of both', () => {
    const found = over('formic acid', 0.5).vapourPressurePaAbs;
    expect(found).toBe(Math.max(pure('formic acid'), pure('water')));
  });

  it('of a salt is bounded by water, and is that of water without salt', () => {
    expect(over('sodium chloride', 0.2)).toMatchObject({
      vapourPressurePaAbs: pure('water'),
      vapourPressureIsUpperBound: true,
    });
    expect(over('sodium chloride', 0).vapourPressureIsUpperBound).toBe(false);
  });
});

describe('what is asked for', () => {
  it('is one liquid: a substance, or a solute with its share', () => {
    expect(findLiquid({ substance: 'water', solute: 'ammonia' })).toMatchObject({
      ok: false,
      error: { field: 'substance' },
    });
    const solution = valueOf(findLiquid({ substance: 'acetic acid', massFraction: 0.5 }));
    expect(solution).toMatchObject({ kind: 'solution', name: 'acetic acid 50 % in water' });
    expect(valueOf(findLiquid({ substance: 'acetic acid', massFraction: 1 })).kind).toBe('pure');
    expect(valueOf(findLiquid({ substance: 'acetic acid' })).kind).toBe('pure');
  });

  it('is both densities of a batch or none', () => {
    const batch = { coldVolumeM3: 0.001, coldTemperatureK: 290, hotTemperatureK: 350 };
    expect(evaluate(hotVolume, { ...batch, coldDensityKgPerM3: 900 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'hotDensityKgPerM3' },
    });
    expect(evaluate(hotVolume, { ...batch, hotDensityKgPerM3: 900 })).toMatchObject({
      ok: false,
      error: { field: 'coldDensityKgPerM3' },
    });
    const given = { ...batch, coldDensityKgPerM3: 900, hotDensityKgPerM3: 800, vesselVolumeM3: 0.002 };
    // 1 L × 900/800 = 1.125 L in 2 L
    expect(valueOf(evaluate(hotVolume, given))).toMatchObject({
      coldFillFraction: 0.5,
      hotFillFraction: 0.5625,
    });
  });

  it.each([
    ['cold', { coldTemperatureK: 100, hotTemperatureK: 350 }, 'coldTemperatureK'],
    ['hot', { coldTemperatureK: 290, hotTemperatureK: 640 }, 'hotTemperatureK'],
  ])('is told by its own name where a liquid has no density: %s', (_words, temperatures, field) => {
    expect(evaluate(hotVolume, { substance: 'toluene', coldVolumeM3: 0.001, ...temperatures })).toMatchObject(
      { ok: false, error: { field } },
    );
  });

  it('is a working temperature not below that of filling, and a liquid that grows more than its vessel', () => {
    const full = { substance: 'toluene', fillTemperatureK: 300 };
    expect(evaluate(liquidFullFraction, { ...full, workTemperatureK: 299 })).toMatchObject({
      ok: false,
      error: { field: 'workTemperatureK' },
    });
    expect(valueOf(evaluate(liquidFullFraction, { ...full, workTemperatureK: 300 })).fillFraction).toBe(1);
    expect(evaluate(liquidFullFraction, { ...full, workTemperatureK: 640 })).toMatchObject({
      ok: false,
      error: { field: 'workTemperatureK' },
    });
    expect(
      evaluate(liquidFullPressureRise, {
        liquidExpansionPerK: 1e-5,
        vesselExpansionPerK: 5e-5,
        compressibilityPerPa: 5e-10,
        diameterOverThickness: 20,
        elasticModulusPa: 2e11,
      }).ok,
    ).toBe(false);
  });

  it('is a mixture whose shares come to 1, within rounding', () => {
    const of = (first: number, second: number) =>
      evaluate(mixture, {
        components: [
          { substance: 'benzene', massFraction: first },
          { substance: 'toluene', massFraction: second },
        ],
        temperatureK: 373.15,
      });
    expect(of(0.5, 0.4).ok).toBe(false);
    // A part without mass adds no vapour to the bound for parts that do not mix.
    expect(valueOf(of(0, 1)).vapourPressureUpperBoundPaAbs).toBe(valueOf(of(0, 1)).vapourPressureIdealPaAbs);
  });
});

it('the constants of a pure liquid are on file with its properties; a solution has its molar mass', () => {
  const toluene = valueOf(evaluate(fluidProperties, { substance: 'toluene', temperatureK: 300 }));
  expect(toluene).toMatchObject({
    molarMassKgPerMol: 0.09213842,
    criticalTemperatureK: 591.75,
    criticalPressurePaAbs: 4_108_000,
    normalBoilingPointK: 383.8,
  });
  const caustic = valueOf(
    evaluate(fluidProperties, { solute: 'sodium hydroxide', massFraction: 0.2, temperatureK: 300 }),
  );
  expect(caustic.molarMassKgPerMol).toBe(0.04001);
  expect('criticalTemperatureK' in caustic).toBe(false);
});

it('a second row is told by how much it differs', () => {
  const { steps } = valueOf(
    evaluateWithEvidence(vapourPressure, { substance: 'toluene', temperatureK: 400 }),
  );
  // Wagner of Poling against that of McGarry at 400 K: 157.7 and 157.5 kPa, or so.
  const difference = Number(/\((-?[\d.]+) %\)/u.exec(steps[0]?.note ?? '')?.[1]);
  expect(Math.abs(difference)).toBeLessThan(0.5);
});
