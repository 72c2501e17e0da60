import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import { calculation, quantity } from '../calculation.js';
import { absolutePressureField, gasField } from '../gas/gas-fields.js';
import { gasState } from '../gas/gas-state.js';
import { molarGasConstant } from '../molar-gas-constant.js';
import { outOfRange } from '../out-of-range.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { atLeastZero, positive } from './utilities-fields.js';

/** Molar volume of an ideal gas at 0 °C and 1 atm, the normal state of DIN 1343 [m³/mol]. */
const normalMolarVolume = (molarGasConstant * 273.15) / normalAtmospherePa;

/**
 * Gas that a batch takes: what reacts, what swings of pressure purge, and what sweeps through.
 *
 *   n = n_r + k V/(R T) (p_h/Z_h − p_l/Z_l) + t F,  y/y_0 = (p_l/p_h)^k
 *
 * @param gas                  CAS number or common name
 * @param reactedMol           n_r taken up by the reaction [mol]
 * @param purgeCount k, gasSpaceM3 V, purgePressurePaAbs p_h, purgeLowPressurePaAbs p_l, the standard atmosphere unless given
 * @param sweepFlowNormalM3PerH F at 0 °C and 1 atm, sweepTimeS t
 * @param temperatureK         T of the gas space, 293.15 unless given [K]; batchesPerDay
 * @returns amountPerBatchMol, massPerBatchKg, normalVolumePerBatchM3, normalVolumePerDayM3; residualShare of the former gas
 * @range as gas.compressibilityFactor; ideal mixing of each purge; leaks not counted
 * @error CALC_OUT_OF_RANGE where the purge does not rise, CALC_UNKNOWN_SUBSTANCE
 * @source real-gas law; crowl-louvar ch. 7 (purging by swings of pressure)
 */
export const gasConsumption = calculation({
  id: 'utilities.gasConsumption',
  title: 'Gas consumption of a batch',
  inputs: z.strictObject({
    gas: gasField,
    reactedMol: atLeastZero('mol', 'n_r', 'Gas taken up by the reaction').default(0),
    gasSpaceM3: positive('m3', 'V', 'Gas space of the vessel while it is purged'),
    purgeCount: quantity(
      { unit: '1', symbol: 'k', description: 'Number of purges by swings of pressure' },
      z.number().int().min(0).max(100),
    ).default(0),
    purgePressurePaAbs: absolutePressureField('p_h', 'Absolute pressure to which a purge fills').optional(),
    purgeLowPressurePaAbs: absolutePressureField(
      'p_l',
      'Absolute pressure from which it fills; the standard atmosphere unless given',
    ).default(normalAtmospherePa),
    sweepFlowNormalM3PerH: atLeastZero('m3/h', 'F', 'Flow swept through, at 0 °C and 1 atm').default(0),
    sweepTimeS: atLeastZero('s', 't', 'Time for which it sweeps').default(0),
    temperatureK: positive('K', 'T', 'Temperature of the gas space').default(293.15),
    batchesPerDay: atLeastZero('1/d', 'b', 'Batches a day').default(1),
  }),
  outputs: z.strictObject({
    amountPerBatchMol: quantity({ unit: 'mol', symbol: 'n', description: 'Gas for a batch' }),
    massPerBatchKg: quantity({ unit: 'kg', symbol: 'm', description: 'Mass of it' }),
    normalVolumePerBatchM3: quantity({
      unit: 'm3',
      symbol: 'V_n',
      description: 'Volume of it as an ideal gas at 0 °C and 1 atm',
    }),
    normalVolumePerDayM3: quantity({ unit: 'm3/d', symbol: 'V_d', description: 'Normal volume a day' }),
    residualShare: quantity({
      unit: '1',
      symbol: 'y/y_0',
      description: 'Share of the former gas left after the purges',
    }),
  }),
  formula: String.raw`n = n_r + k\,\frac{V}{R\,T}\left(\frac{p_h}{Z_h} - \frac{p_l}{Z_l}\right) + t\,F,\quad \frac{y}{y_0} = \left(\frac{p_l}{p_h}\right)^k`,
  range: 'as gas.compressibilityFactor; each purge mixes ideally; leaks and the flow of the vent not counted',
  source: [
    published('real-gas law with the reference equation of state of the gas'),
    fromMemory('crowl-louvar ch. 7 purging'),
  ],
  compute: (given, log) => {
    const { gas, gasSpaceM3: V, purgeCount: k, purgeLowPressurePaAbs: low, temperatureK } = given;
    const high = given.purgePressurePaAbs ?? low;
    if (k > 0 && high <= low) {
      return outOfRange({
        field: 'purgePressurePaAbs',
        given: high,
        unit: 'Pa',
        allowed: `above purgeLowPressurePaAbs (${shown(low)} Pa)`,
      });
    }
    const filled = gasState(gas, { pressurePaAbs: high, temperatureK });
    if (!filled.ok) return relabelled(filled.error, { pressurePaAbs: 'purgePressurePaAbs' });
    const empty = gasState(gas, { pressurePaAbs: low, temperatureK });
    if (!empty.ok) return relabelled(empty.error, { pressurePaAbs: 'purgeLowPressurePaAbs' });
    const perPurge =
      (V / (molarGasConstant * temperatureK)) *
      (high / filled.value.compressibilityFactor - low / empty.value.compressibilityFactor);
    const swept = ((given.sweepFlowNormalM3PerH / 3600) * given.sweepTimeS) / normalMolarVolume;
    const amountPerBatchMol = given.reactedMol + k * perPurge + swept;
    const normalVolumePerBatchM3 = amountPerBatchMol * normalMolarVolume;
    log?.({
      symbol: 'n_p',
      formula: 'V/(R T) (p_h/Z_h − p_l/Z_l)',
      substituted: `${shown(V)} / (${shown(molarGasConstant)} × ${shown(temperatureK)}) × (${shown(high)}/${shown(filled.value.compressibilityFactor)} − ${shown(low)}/${shown(empty.value.compressibilityFactor)})`,
      value: perPurge,
      unit: 'mol',
      note: `${filled.value.name}: ${filled.value.equation}`,
    });
    log?.({
      symbol: 'n',
      formula: 'n_r + k n_p + n_s',
      substituted: `${shown(given.reactedMol)} + ${String(k)} × ${shown(perPurge)} + ${shown(swept)}`,
      value: amountPerBatchMol,
      unit: 'mol',
    });
    log?.({
      symbol: 'V_n',
      formula: 'n R 273.15 K / 101325 Pa',
      substituted: `${shown(amountPerBatchMol)} × ${shown(normalMolarVolume)}`,
      value: normalVolumePerBatchM3,
      unit: 'm3',
    });
    return succeed({
      amountPerBatchMol,
      massPerBatchKg: amountPerBatchMol * filled.value.molarMassKgPerMol,
      normalVolumePerBatchM3,
      normalVolumePerDayM3: normalVolumePerBatchM3 * given.batchesPerDay,
      residualShare: (low / high) ** k,
    });
  },
});
