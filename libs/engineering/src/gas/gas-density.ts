import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { absolutePressureField, gasField, gasTemperatureField } from './gas-fields.js';
import { gasState } from './gas-state.js';

/**
 * Density of a gas.
 *
 *   ρ = p M / (Z R T)
 *
 * @param gas           CAS number or common name
 * @param pressurePaAbs p [Pa]
 * @param temperatureK  T [K]
 * @returns densityKgPerM3 ρ [kg/m³], molarDensityMolPerM3 [mol/m³], compressibilityFactor Z [-], relativeUncertainty [-]
 * @range as gas.compressibilityFactor
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_NOT_CONVERGED
 * @source the reference equation of the gas (named in the step); peng-robinson-1976 for other gases
 */
export const gasDensity = calculation({
  id: 'gas.density',
  title: 'Density of a gas',
  inputs: z.strictObject({
    gas: gasField,
    pressurePaAbs: absolutePressureField('p', 'Absolute pressure'),
    temperatureK: gasTemperatureField,
  }),
  outputs: z.strictObject({
    densityKgPerM3: quantity({ unit: 'kg/m3', symbol: 'ρ', description: 'Density' }),
    molarDensityMolPerM3: quantity({ unit: 'mol/m3', symbol: 'ρ_m', description: 'Molar density' }),
    compressibilityFactor: quantity({ unit: '1', symbol: 'Z', description: 'Compressibility factor' }),
    relativeUncertainty: quantity({
      unit: '1',
      symbol: 'u',
      description: 'Half width of the expected band of the density, relative',
    }),
  }),
  formula: String.raw`\rho = \frac{p\,M}{Z\,R\,T}`,
  range: 'as gas.compressibilityFactor',
  source: [published('reference equation of state of the gas'), published('peng-robinson-1976')],
  compute: ({ gas, pressurePaAbs, temperatureK }, log) => {
    const state = gasState(gas, { pressurePaAbs, temperatureK });
    if (!state.ok) return state;
    const { compressibilityFactor, molarDensityMolPerM3, molarMassKgPerMol, relativeUncertainty } =
      state.value;
    const densityKgPerM3 = molarDensityMolPerM3 * molarMassKgPerMol;
    log?.({
      symbol: 'ρ',
      formula: 'p M / (Z R T)',
      substituted: `${shown(molarDensityMolPerM3)} mol/m³ × ${shown(molarMassKgPerMol)} kg/mol, Z = ${shown(compressibilityFactor)}`,
      value: densityKgPerM3,
      unit: 'kg/m3',
      note: `${state.value.name}: ${state.value.equation}`,
    });
    return succeed({ densityKgPerM3, molarDensityMolPerM3, compressibilityFactor, relativeUncertainty });
  },
});
