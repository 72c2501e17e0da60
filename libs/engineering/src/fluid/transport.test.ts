import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { boilingTemperature } from './boiling-temperature.js';
import { fluids } from './fluid-data.js';
import { liquidConductivity } from './liquid-conductivity.js';
import { liquidViscosity } from './liquid-viscosity.js';
import { vapourPressure } from './vapour-pressure.js';

const viscosity = (substance: string, temperatureK: number): number => {
  const outcome = evaluate(liquidViscosity, { substance, temperatureK });
  return outcome.ok ? outcome.value.viscosityPaS : NaN;
};

const conductivity = (substance: string, temperatureK: number): number => {
  const outcome = evaluate(liquidConductivity, { substance, temperatureK });
  return outcome.ok ? outcome.value.conductivityWPerMK : NaN;
};

it('viscosity and conductivity of water meet another library of the IAPWS formulations', () => {
  const steam = new IAPWS97_EoS();
  for (const t of [280, 300, 330, 360]) {
    const state = steam.solve({ p: 1e5, t });
    expect(viscosity('water', t) / (Number(state.mu) / 1000)).toBeCloseTo(1, 1);
    expect(conductivity('water', t) / Number(state.k)).toBeCloseTo(1, 2);
  }
});

// CRC Handbook, viscosity of liquids at 25 °C [mPa·s] and thermal conductivity of liquids at 25 °C [W/(m·K)].
it.each([
  ['methanol', 0.544, 0.2],
  ['ethanol', 1.074, 0.169],
  ['acetone', 0.306, 0.161],
  ['toluene', 0.56, 0.131],
  ['benzene', 0.604, 0.141],
  ['chloroform', 0.537, 0.117],
])('%s at 25 °C is that of the CRC Handbook within 3 %', (substance, mPaS, expected) => {
  expect(Math.abs((1000 * viscosity(substance, 298.15)) / mPaS - 1)).toBeLessThan(0.03);
  expect(Math.abs(conductivity(substance, 298.15) / expected - 1)).toBeLessThan(0.03);
});

it('viscosity falls with temperature and conductivity stays positive over their ranges', () => {
  for (const fluid of fluids) {
    for (const { model, minTemperatureK, maxTemperatureK } of fluid.liquidViscosity) {
      if (model === 'constant') continue;
      const at = (share: number) =>
        viscosity(fluid.cas, minTemperatureK + share * (maxTemperatureK - minTemperatureK));
      for (const share of [0, 0.25, 0.5, 0.75]) expect(at(share + 0.25)).toBeLessThan(at(share));
    }
    for (const { minTemperatureK, maxTemperatureK } of fluid.liquidConductivity) {
      for (const share of [0, 0.5, 1]) {
        const value = conductivity(fluid.cas, minTemperatureK + share * (maxTemperatureK - minTemperatureK));
        expect(value, fluid.name).toBeGreaterThan(0.01);
        expect(value, fluid.name).toBeLessThan(1);
      }
    }
  }
});

it('a liquid boils where its vapour pressure is the pressure', () => {
  const known = fluids.filter(({ vapourPressure: rows }) => rows.length > 0);
  fc.assert(
    fc.property(fc.constantFrom(...known), fc.double({ min: 2, max: 8, noNaN: true }), (fluid, exponent) => {
      const pressurePaAbs = 10 ** exponent;
      const boiling = evaluate(boilingTemperature, { substance: fluid.cas, pressurePaAbs });
      if (!boiling.ok) {
        expect(boiling.error.code).toBe('CALC_OUT_OF_RANGE');
        return;
      }
      const back = evaluate(vapourPressure, {
        substance: fluid.cas,
        temperatureK: boiling.value.temperatureK,
      });
      // Where one row takes over from another the pressure steps by less than the sources differ.
      expect(back.ok && Math.abs(back.value.pressurePaAbs / pressurePaAbs - 1)).toBeLessThan(0.03);
    }),
    { seed: 13, numRuns: 500 },
  );
});
