import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { correlationValue } from './correlation.js';
import { findFluid, fluids } from './fluid-data.js';
import { propertyRange } from './fluid-property.js';
import { vapourPressure } from './vapour-pressure.js';

const pressure = (substance: string, temperatureK: number): number => {
  const outcome = evaluate(vapourPressure, { substance, temperatureK });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.pressurePaAbs;
};

const withPressure = fluids.filter(({ vapourPressure: rows }) => rows.length > 0);

describe('vapour pressure of water', () => {
  // IAPWS-IF97 (2012 revision), table 35: saturation pressure.
  it.each([
    [300, 3536.58941],
    [500, 2638897.76],
    [600, 12344314.6],
  ])('agrees with the printed check value at %d K', (temperatureK, expected) => {
    expect(Math.abs(pressure('water', temperatureK) / expected - 1)).toBeLessThan(0.003);
  });

  it('lies where the steam tables of another library change from vapour to liquid', () => {
    const steam = new IAPWS97_EoS();
    for (const t of [300, 350, 400, 450, 500, 550, 600, 620]) {
      expect(steam.solve({ p: 1.003 * pressure('water', t), t }).rho).toBeGreaterThan(500);
      expect(steam.solve({ p: 0.997 * pressure('water', t), t }).rho).toBeLessThan(150);
    }
  });
});

describe('vapour pressure of any fluid', () => {
  it('rises with temperature over the whole range', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...withPressure),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (fluid, share, step) => {
          const { minTemperatureK, maxTemperatureK } = propertyRange(fluid, 'vapourPressure')!;
          const low = minTemperatureK + share * (maxTemperatureK - minTemperatureK);
          const high = Math.min(low + step, maxTemperatureK);
          fc.pre(high - low >= 0.02 * low);
          expect(pressure(fluid.cas, high)).toBeGreaterThan(pressure(fluid.cas, low));
        },
      ),
      { seed: 1, numRuns: 2000 },
    );
  });

  it('is finite and positive or has a coded error at any temperature', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...fluids),
        fc.double({ noNaN: true, min: -10, max: 1e6 }),
        (fluid, temperatureK) => {
          const outcome = evaluate(vapourPressure, { substance: fluid.cas, temperatureK });
          if (outcome.ok) expect(outcome.value.pressurePaAbs).toBeGreaterThan(0);
          else expect(['CALC_OUT_OF_RANGE', 'CALC_MISSING_PROPERTY']).toContain(outcome.error.code);
        },
      ),
      { seed: 2, numRuns: 2000 },
    );
  });

  it.each(withPressure.map((fluid) => [fluid.name, fluid] as const))(
    'ends where its data end: %s',
    (_name, fluid) => {
      const { minTemperatureK, maxTemperatureK } = propertyRange(fluid, 'vapourPressure')!;
      for (const inside of [minTemperatureK, maxTemperatureK]) {
        expect(evaluate(vapourPressure, { substance: fluid.cas, temperatureK: inside }).ok).toBe(true);
      }
      for (const outside of [minTemperatureK - 0.01, maxTemperatureK + 0.01]) {
        expect(evaluate(vapourPressure, { substance: fluid.cas, temperatureK: outside })).toMatchObject({
          ok: false,
          error: { code: 'CALC_OUT_OF_RANGE', field: 'temperatureK' },
        });
      }
    },
  );

  it('says that there is no liquid above the critical point', () => {
    const outcome = evaluate(vapourPressure, { substance: 'methanol', temperatureK: 520 });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE' } });
    expect(outcome.ok ? '' : outcome.error.message).toContain('critical point at 512.5 K');
  });

  // Two independent handbook sources a fluid; known disagreements of solvents at their low end are wider.
  it.each(
    withPressure
      .filter(({ vapourPressure: rows }) => rows.length > 1)
      .map((fluid) => [fluid.name, fluid] as const),
  )('two sources agree within 6 % between 0.6 and 0.9 of the critical temperature: %s', (_name, fluid) => {
    const critical = fluid.criticalPoint?.temperatureK;
    if (critical === undefined) return;
    for (const share of [0.6, 0.7, 0.8, 0.9]) {
      const values = fluid.vapourPressure
        .filter((row) => row.model !== 'antoine' && row.model !== 'antoine10')
        .filter((row) => share * critical >= row.minTemperatureK && share * critical <= row.maxTemperatureK)
        .map((row) => correlationValue(row, share * critical));
      for (const value of values) expect(Math.abs(value / values[0]! - 1)).toBeLessThan(0.06);
    }
  });
});

describe('finding a substance', () => {
  it.each(['67-56-1', 'methanol', 'Methanol', ' MeOH ', 'methyl alcohol'])('knows methanol as %s', (name) => {
    expect(findFluid(name)).toMatchObject({ ok: true, value: { cas: '67-56-1' } });
  });

  it('names every fluid by one key only', () => {
    const keys = fluids.flatMap(({ cas, name, aliases }) =>
      [cas, name, ...aliases].map((key) => key.toLowerCase()),
    );
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('says what is allowed where a substance is unknown', () => {
    expect(evaluate(vapourPressure, { substance: 'unobtainium', temperatureK: 300 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_UNKNOWN_SUBSTANCE', field: 'substance', given: 'unobtainium' },
    });
  });

  it('says where a property is missing', () => {
    expect(evaluate(vapourPressure, { substance: 'sulfuric acid', temperatureK: 300 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_MISSING_PROPERTY' },
    });
  });
});

it('shows the constants, the source and a second source in its evidence', () => {
  const evidence = evaluateWithEvidence(vapourPressure, { substance: 'toluene', temperatureK: 373.15 });
  if (!evidence.ok) throw new Error(evidence.error.message);
  expect(evidence.value.steps).toHaveLength(1);
  expect(evidence.value.steps[0]!.substituted).toContain('criticalTemperatureK = 591.8');
  expect(evidence.value.steps[0]!.note).toMatch(/poling-5.*mcgarry-1983 gives/);
});
