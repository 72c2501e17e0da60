import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { approachLogarithm } from './approach.js';
import { heatFields } from './heat-fields.js';

/**
 * Time to heat or cool a stirred batch by a medium that flows once through jacket or coil.
 *
 *   t = M C/(W c) · K/(K − 1) · ln((T_in − T1)/(T_in − T2)),  K = exp(U A/(W c))
 *
 * @param batchMassKg               M [kg]
 * @param heatCapacityJPerKgK       C [J/(kg·K)]
 * @param overallCoefficientWPerM2K U [W/(m²·K)]
 * @param areaM2                    A [m²]
 * @param mediumFlowKgPerS          W [kg/s]
 * @param mediumHeatCapacityJPerKgK c [J/(kg·K)]
 * @param mediumInletTemperatureK   T_in, constant [K]
 * @param startTemperatureK         T1 [K]
 * @param endTemperatureK           T2, between T1 and T_in [K]
 * @returns timeS t [s]
 * @range U constant, batch mixed, vessel and losses neglected
 * @error CALC_OUT_OF_RANGE where T2 is not between T1 and T_in
 * @source kern-1950 ch. 18
 */
export const batchTimeFlowingMedium = calculation({
  id: 'heat.batchTimeFlowingMedium',
  title: 'Heating or cooling time, medium flowing through',
  inputs: z.strictObject({
    batchMassKg: heatFields.batchMassKg,
    heatCapacityJPerKgK: heatFields.heatCapacityJPerKgK,
    overallCoefficientWPerM2K: heatFields.overallCoefficientWPerM2K,
    areaM2: heatFields.areaM2,
    mediumFlowKgPerS: heatFields.mediumFlowKgPerS,
    mediumHeatCapacityJPerKgK: heatFields.mediumHeatCapacityJPerKgK,
    mediumInletTemperatureK: heatFields.mediumInletTemperatureK,
    startTemperatureK: heatFields.startTemperatureK,
    endTemperatureK: heatFields.endTemperatureK,
  }),
  outputs: z.strictObject({ timeS: heatFields.timeS }),
  formula: String.raw`t = \frac{M\,C}{W c}\,\frac{K}{K-1}\,\ln\frac{T_\mathrm{in} - T_1}{T_\mathrm{in} - T_2},\quad K = e^{U A/(W c)}`,
  range: 'U constant, batch mixed, vessel and losses neglected; T2 between T1 and T_in',
  source: [published('kern-1950 ch. 18')],
  compute: (inputs, log) => {
    const logarithm = approachLogarithm({ ...inputs, mediumTemperatureK: inputs.mediumInletTemperatureK });
    if (!logarithm.ok) return logarithm;
    const { batchMassKg: M, heatCapacityJPerKgK: C, overallCoefficientWPerM2K: U, areaM2: A } = inputs;
    const capacityFlow = inputs.mediumFlowKgPerS * inputs.mediumHeatCapacityJPerKgK;
    const effectiveness = -Math.expm1((-U * A) / capacityFlow);
    const timeS = ((M * C) / (capacityFlow * effectiveness)) * logarithm.value;
    log?.({
      symbol: '(K − 1)/K',
      formula: '1 − exp(−U A/(W c))',
      substituted: `1 − exp(−${shown(U)} × ${shown(A)} / (${shown(inputs.mediumFlowKgPerS)} × ${shown(inputs.mediumHeatCapacityJPerKgK)}))`,
      value: effectiveness,
      unit: '1',
    });
    log?.({
      symbol: 't',
      formula: 'M C/(W c) · K/(K − 1) · ln((T_in − T1)/(T_in − T2))',
      substituted: `${shown(M)} × ${shown(C)} / (${shown(capacityFlow)} × ${shown(effectiveness)}) × ${shown(logarithm.value)}`,
      value: timeS,
      unit: 's',
    });
    return succeed({ timeS });
  },
});
