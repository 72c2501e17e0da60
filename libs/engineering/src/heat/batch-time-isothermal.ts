import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { approachLogarithm } from './approach.js';
import { heatFields } from './heat-fields.js';

/**
 * Time to heat or cool a stirred batch by a medium of constant temperature.
 *
 *   t = M C/(U A) ln((T_m − T1)/(T_m − T2))
 *
 * @param batchMassKg               M [kg]
 * @param heatCapacityJPerKgK       C [J/(kg·K)]
 * @param overallCoefficientWPerM2K U [W/(m²·K)]
 * @param areaM2                    A [m²]
 * @param mediumTemperatureK        T_m [K]
 * @param startTemperatureK         T1 [K]
 * @param endTemperatureK           T2, between T1 and T_m [K]
 * @returns timeS t [s]
 * @range U constant, batch mixed, vessel and losses neglected
 * @error CALC_OUT_OF_RANGE where T2 is not between T1 and T_m
 * @source kern-1950 ch. 18
 */
export const batchTimeIsothermal = calculation({
  id: 'heat.batchTimeIsothermal',
  title: 'Heating or cooling time, medium at constant temperature',
  inputs: z.strictObject({
    batchMassKg: heatFields.batchMassKg,
    heatCapacityJPerKgK: heatFields.heatCapacityJPerKgK,
    overallCoefficientWPerM2K: heatFields.overallCoefficientWPerM2K,
    areaM2: heatFields.areaM2,
    mediumTemperatureK: heatFields.mediumTemperatureK,
    startTemperatureK: heatFields.startTemperatureK,
    endTemperatureK: heatFields.endTemperatureK,
  }),
  outputs: z.strictObject({ timeS: heatFields.timeS }),
  formula: String.raw`t = \frac{M\,C}{U A}\,\ln\frac{T_m - T_1}{T_m - T_2}`,
  range: 'U constant, batch mixed, vessel and losses neglected; T2 between T1 and T_m',
  source: [published('kern-1950 ch. 18')],
  compute: (inputs, log) => {
    const logarithm = approachLogarithm(inputs);
    if (!logarithm.ok) return logarithm;
    const { batchMassKg: M, heatCapacityJPerKgK: C, overallCoefficientWPerM2K: U, areaM2: A } = inputs;
    const timeS = ((M * C) / (U * A)) * logarithm.value;
    log?.({
      symbol: 't',
      formula: 'M C/(U A) ln((T_m − T1)/(T_m − T2))',
      substituted: `${shown(M)} × ${shown(C)} / (${shown(U)} × ${shown(A)}) × ln((${shown(inputs.mediumTemperatureK)} − ${shown(inputs.startTemperatureK)})/(${shown(inputs.mediumTemperatureK)} − ${shown(inputs.endTemperatureK)}))`,
      value: timeS,
      unit: 's',
    });
    return succeed({ timeS });
  },
});
