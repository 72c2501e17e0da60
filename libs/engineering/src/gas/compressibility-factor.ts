import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { absolutePressureField, gasField, gasTemperatureField } from './gas-fields.js';
import { gasState } from './gas-state.js';

/**
 * Compressibility factor of a gas.
 *
 *   Z = p / (ρ R T) = 1 + δ ∂αr/∂δ
 *
 * @param gas           CAS number or common name
 * @param pressurePaAbs p [Pa]
 * @param temperatureK  T [K]
 * @returns compressibilityFactor Z [-]
 * @range the range of the equation, gas side only: below the vapour pressure where T < T_c
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_NOT_CONVERGED
 * @source the reference equation of the gas (named in the step); peng-robinson-1976 for other gases
 */
export const compressibilityFactor = calculation({
  id: 'gas.compressibilityFactor',
  title: 'Compressibility factor of a gas',
  inputs: z.strictObject({
    gas: gasField,
    pressurePaAbs: absolutePressureField('p', 'Absolute pressure'),
    temperatureK: gasTemperatureField,
  }),
  outputs: z.strictObject({
    compressibilityFactor: quantity({ unit: '1', symbol: 'Z', description: 'Compressibility factor' }),
  }),
  formula: String.raw`Z = \frac{p}{\rho R T} = 1 + \delta\,\frac{\partial\alpha^r}{\partial\delta}`,
  range:
    'within the equation of the gas, below the vapour pressure where T < T_c; other gases by Peng–Robinson with the band in the step',
  source: [published('reference equation of state of the gas'), published('peng-robinson-1976')],
  compute: ({ gas, pressurePaAbs, temperatureK }, log) => {
    const state = gasState(gas, { pressurePaAbs, temperatureK });
    if (!state.ok) return state;
    const { compressibilityFactor: Z, molarDensityMolPerM3, name, equation } = state.value;
    log?.({
      symbol: 'Z',
      formula: 'p / (ρ R T), ρ from p(ρ, T) = p on the gas side',
      substituted: `p = ${shown(pressurePaAbs)} Pa, T = ${shown(temperatureK)} K, ρ = ${shown(molarDensityMolPerM3)} mol/m³`,
      value: Z,
      unit: '1',
      note: `${name}: ${equation}`,
    });
    return succeed({ compressibilityFactor: Z });
  },
});
