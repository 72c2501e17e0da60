import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { fluids } from './fluid-data.js';
import { propertyRange } from './fluid-property.js';
import { liquidDensity } from './liquid-density.js';
import { vapourPressure } from './vapour-pressure.js';

const density = (substance: string, temperatureK: number): number => {
  const outcome = evaluate(liquidDensity, { substance, temperatureK });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.densityKgPerM3;
};

const withRange = fluids.filter(({ liquidDensity: rows }) => rows.some(({ model }) => model !== 'constant'));

it('agrees with the steam tables of another library along the saturation line of water', () => {
  const steam = new IAPWS97_EoS();
  for (const t of [280, 300, 350, 400, 450, 500, 550, 600]) {
    const saturation = evaluate(vapourPressure, { substance: 'water', temperatureK: t });
    if (!saturation.ok) throw new Error(saturation.error.message);
    const rho = Number(steam.solve({ p: 1.003 * saturation.value.pressurePaAbs, t }).rho);
    expect(Math.abs(density('water', t) / rho - 1)).toBeLessThan(0.005);
  }
});

describe('density of any liquid', () => {
  it('falls with temperature', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...withRange),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (fluid, share) => {
          const { minTemperatureK, maxTemperatureK } = propertyRange(fluid, 'liquidDensity')!;
          const low = Math.max(
            fluid.cas === '7732-18-5' ? 278 : 0,
            minTemperatureK + share * (maxTemperatureK - minTemperatureK),
          );
          const high = low + 0.01 * low;
          fc.pre(high <= maxTemperatureK);
          expect(density(fluid.cas, high)).toBeLessThan(density(fluid.cas, low));
        },
      ),
      { seed: 3, numRuns: 1000 },
    );
  });

  it('is a liquid density or a coded error at any temperature', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...fluids),
        fc.double({ noNaN: true, min: 1, max: 5000 }),
        (fluid, temperatureK) => {
          const outcome = evaluate(liquidDensity, { substance: fluid.cas, temperatureK });
          if (outcome.ok) {
            expect(outcome.value.densityKgPerM3).toBeGreaterThan(20);
            expect(outcome.value.densityKgPerM3).toBeLessThan(2000);
          } else expect(['CALC_OUT_OF_RANGE', 'CALC_MISSING_PROPERTY']).toContain(outcome.error.code);
        },
      ),
      { seed: 4, numRuns: 1000 },
    );
  });
});
