import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { aqueousSolutions } from './aqueous-solution-data.js';
import { fluids } from './fluid-data.js';
import { fluidProperties } from './properties.js';

const properties = (
  inputs: Parameters<
    typeof evaluate<(typeof fluidProperties)['inputs'], (typeof fluidProperties)['outputs']>
  >[1],
) => {
  const outcome = evaluate(fluidProperties, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

const valueFields = [
  'densityKgPerM3',
  'heatCapacityJPerKgK',
  'viscosityPaS',
  'conductivityWPerMK',
  'vapourPressurePaAbs',
  'heatOfVaporisationJPerKg',
  'thermalExpansionPerK',
] as const;

describe('properties of a liquid', () => {
  it('knows everything of methanol at 20 °C', () => {
    const found = properties({ substance: 'methanol', temperatureK: 293.15 });
    expect(found.missing).toEqual([]);
    expect(found.estimated).toEqual([]);
    expect(found.fromMemory).toEqual([]);
    // CRC Handbook: 0.7914 g/cm³ at 20 °C; 0.544 mPa·s and 0.200 W/(m·K) at 25 °C.
    expect(found.densityKgPerM3).toBeCloseTo(791.4, -1);
    expect(properties({ substance: 'methanol', temperatureK: 298.15 }).viscosityPaS).toBeCloseTo(0.000544, 4);
    expect(properties({ substance: 'methanol', temperatureK: 298.15 }).conductivityWPerMK).toBeCloseTo(
      0.2,
      2,
    );
    // Thermal expansion of methanol at 20 °C by the reference equation: 1.18e-3 1/K.
    expect(found.thermalExpansionPerK).toBeCloseTo(0.00118, 4);
  });

  it('extends heat capacity past its data by a rule that meets toluene and n-hexane within 5 %', () => {
    for (const substance of ['toluene', 'n-hexane']) {
      const at = (temperatureK: number) => properties({ substance, temperatureK }).heatCapacityJPerKgK!;
      const critical = properties({ substance, temperatureK: 300 }).criticalTemperatureK!;
      for (const to of [0.75, 0.8]) {
        const rule = at(0.65 * critical) * ((1 - 0.65) / (1 - to)) ** 0.28;
        expect(Math.abs(rule / at(to * critical) - 1)).toBeLessThan(0.05);
      }
    }
  });

  it('marks what it estimates and what is from memory', () => {
    const hot = properties({ substance: 'methanol', temperatureK: 423.15 });
    expect(hot.estimated.map((text) => text.split(':')[0])).toEqual(['heatCapacityJPerKgK', 'viscosityPaS']);
    expect(properties({ substance: 'glycerol', temperatureK: 423.15 }).fromMemory).toEqual([
      'heatCapacityJPerKgK',
    ]);
  });

  it('names every property that it has not', () => {
    const gas = properties({ substance: 'hydrogen', temperatureK: 298.15 });
    expect(gas.missing).toEqual([...valueFields]);
    expect(gas.criticalTemperatureK).toBeCloseTo(33.1, 1);
  });

  it('gives a value or a name among the missing, never both and never neither', () => {
    const liquids = [
      ...fluids.map(({ cas }) => ({ substance: cas })),
      ...aqueousSolutions.map(({ cas }) => ({ solute: cas, massFraction: 0.05 })),
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...liquids),
        fc.double({ min: 10, max: 900, noNaN: true }),
        (liquid, temperatureK) => {
          const found = properties({ ...liquid, temperatureK });
          for (const field of valueFields) {
            expect(found[field] === undefined).toBe(found.missing.includes(field));
            if (found[field] !== undefined && field !== 'thermalExpansionPerK')
              expect(found[field]).toBeGreaterThan(0);
          }
        },
      ),
      { seed: 5, numRuns: 2000 },
    );
  });

  it('needs a substance or a solution', () => {
    expect(evaluate(fluidProperties, { temperatureK: 300 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT' },
    });
    expect(
      evaluate(fluidProperties, { substance: 'water', solute: 'sodium chloride', temperatureK: 300 }),
    ).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT' },
    });
  });
});
