import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { molarGasConstant } from '../molar-gas-constant.js';
import { outOfRange } from '../out-of-range.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { absolutePressureField, gasField, gasTemperatureField } from './gas-fields.js';
import { gasState } from './gas-state.js';

/**
 * Amount of gas that a reservoir gave off between two pressures at one temperature.
 *
 *   n = V (p1/Z1 − p2/Z2) / (R T)
 *
 * @param gas                 CAS number or common name
 * @param reservoirVolumeM3   V [m³]
 * @param startPressurePaAbs  p1 [Pa]
 * @param endPressurePaAbs    p2 ≤ p1 [Pa]
 * @param temperatureK        T of the reservoir, both times after it settled [K]
 * @returns amountMol n [mol]
 * @range as gas.compressibilityFactor; isothermal end states
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_NOT_CONVERGED
 * @source real-gas law
 */
export const dosedAmount = calculation({
  id: 'gas.dosedAmount',
  title: 'Gas dosed from a reservoir',
  inputs: z.strictObject({
    gas: gasField,
    reservoirVolumeM3: quantity(
      { unit: 'm3', symbol: 'V', description: 'Volume of the reservoir' },
      z.number().positive(),
    ),
    startPressurePaAbs: absolutePressureField('p1', 'Absolute pressure before'),
    endPressurePaAbs: absolutePressureField('p2', 'Absolute pressure after'),
    temperatureK: gasTemperatureField,
  }),
  outputs: z.strictObject({
    amountMol: quantity({ unit: 'mol', symbol: 'n', description: 'Amount of gas given off' }),
  }),
  formula: String.raw`n = \frac{V}{R\,T}\left(\frac{p_1}{Z_1} - \frac{p_2}{Z_2}\right)`,
  range: 'as gas.compressibilityFactor, p2 ≤ p1, isothermal end states',
  source: [published('real-gas law with the reference equation of state of the gas')],
  compute: ({ gas, reservoirVolumeM3, startPressurePaAbs, endPressurePaAbs, temperatureK }, log) => {
    if (endPressurePaAbs > startPressurePaAbs) {
      return outOfRange({
        field: 'endPressurePaAbs',
        given: endPressurePaAbs,
        unit: 'Pa',
        allowed: `up to startPressurePaAbs (${shown(startPressurePaAbs)} Pa)`,
      });
    }
    const start = gasState(gas, { pressurePaAbs: startPressurePaAbs, temperatureK });
    if (!start.ok) return relabelled(start.error, { pressurePaAbs: 'startPressurePaAbs' });
    const end = gasState(gas, { pressurePaAbs: endPressurePaAbs, temperatureK });
    if (!end.ok) return relabelled(end.error, { pressurePaAbs: 'endPressurePaAbs' });
    const [first, second] = [start.value.compressibilityFactor, end.value.compressibilityFactor];
    const amountMol =
      (reservoirVolumeM3 * (startPressurePaAbs / first - endPressurePaAbs / second)) /
      (molarGasConstant * temperatureK);
    log?.({
      symbol: 'Z1, Z2',
      formula: 'compressibility factors before and after',
      substituted: `Z1 = ${shown(first)}, Z2 = ${shown(second)}`,
      value: first,
      unit: '1',
      note: `${start.value.name}: ${start.value.equation}`,
    });
    log?.({
      symbol: 'n',
      formula: 'V (p1/Z1 − p2/Z2) / (R T)',
      substituted: `${shown(reservoirVolumeM3)} × (${shown(startPressurePaAbs)}/${shown(first)} − ${shown(endPressurePaAbs)}/${shown(second)}) / (${shown(molarGasConstant)} × ${shown(temperatureK)})`,
      value: amountMol,
      unit: 'mol',
    });
    return succeed({ amountMol });
  },
});
