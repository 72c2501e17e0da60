import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { basisSchema, weakestBasis } from '../materials/basis.js';
import { fromMemory, published } from '../source-reference.js';
import { findIgnitionData, gasGroupField } from './ignition-data.js';
import { temperatureClassField, temperatureClassOf } from './temperature-class.js';

/**
 * Ignition data of a flammable gas or vapour in air at 1 bar.
 *
 *   class from T_ai as in hazardousArea.temperatureClass
 *
 * @param substance common name or CAS number
 * @returns autoignitionTemperatureK, temperatureClass, gasGroup, and flash point and lower limit where on file
 * @range air at 1 bar and 20 °C: pressure and oxygen lower the autoignition temperature
 * @error CALC_UNKNOWN_SUBSTANCE
 * @source iec-60079-20-1:2010 (rows in ignition-data.json, gas groups partly from memory)
 */
export const ignitionOfSubstance = calculation({
  id: 'hazardousArea.substance',
  title: 'Ignition data of a substance',
  inputs: z.strictObject({
    substance: z.string().min(1).meta({ description: 'Common name or CAS number' }),
  }),
  outputs: z.strictObject({
    autoignitionTemperatureK: quantity({
      unit: 'K',
      symbol: 'T_ai',
      description: 'Autoignition temperature in air at 1 bar',
    }),
    temperatureClass: temperatureClassField,
    gasGroup: gasGroupField,
    flashPointK: quantity({ unit: 'K', symbol: 'T_f', description: 'Flash point, closed cup' }).optional(),
    lowerExplosionLimitPercent: quantity({
      unit: '%',
      symbol: 'LEL',
      description: 'Lower explosion limit in air, by volume',
    }).optional(),
    basis: basisSchema.meta({ description: 'What the row is worth, gas group included' }),
  }),
  formula: String.raw`\text{row of the substance; class from } T_{ai}`,
  range: 'substances on file; air at 1 bar',
  source: [published('iec-60079-20-1:2010'), fromMemory('iec-60079-20-1:2010 gas groups and rows so marked')],
  compute: ({ substance }, log) => {
    const found = findIgnitionData(substance);
    if (!found.ok) return found;
    const { name, autoignitionTemperatureC, flashPointC, lowerExplosionLimitPercent, gasGroup } = found.value;
    const autoignitionTemperatureK = autoignitionTemperatureC + 273.15;
    const temperatureClass = temperatureClassOf(autoignitionTemperatureK);
    if (!temperatureClass.ok) return temperatureClass;
    const basis = weakestBasis([found.value.basis, found.value.gasGroupBasis]);
    log?.({
      symbol: 'T_ai',
      formula: 'row of the substance',
      substituted: name,
      value: autoignitionTemperatureK,
      unit: 'K',
      note: `${found.value.source}; group ${gasGroup}: ${found.value.gasGroupSource} (${found.value.gasGroupBasis})`,
    });
    return succeed({
      autoignitionTemperatureK,
      temperatureClass: temperatureClass.value,
      gasGroup,
      ...(flashPointC === undefined ? {} : { flashPointK: flashPointC + 273.15 }),
      ...(lowerExplosionLimitPercent === undefined ? {} : { lowerExplosionLimitPercent }),
      basis,
    });
  },
});
