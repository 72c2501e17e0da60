import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/**
 * Heat that a medium takes from (positive) or gives to (negative) a mixed batch of constant temperature.
 *
 *   Q = ε W c (T − T_in),  ε = 1 − exp(−U A/(W c)),  T_out = T_in + Q/(W c)
 *
 * @param overallCoefficientWPerM2K U [W/(m²·K)]
 * @param areaM2                    A [m²]
 * @param mediumFlowKgPerS          W [kg/s]
 * @param mediumHeatCapacityJPerKgK c [J/(kg·K)]
 * @param batchTemperatureK         T [K]
 * @param mediumInletTemperatureK   T_in [K]
 * @returns dutyW Q [W], mediumOutletTemperatureK T_out [K]
 * @range medium without change of phase
 * @source vdi-heat-atlas part C1 (effectiveness and NTU, one side isothermal)
 */
export const coolingDuty = calculation({
  id: 'heat.coolingDuty',
  title: 'Heat taken up by a medium from a batch of constant temperature',
  inputs: z.strictObject({
    overallCoefficientWPerM2K: heatFields.overallCoefficientWPerM2K,
    areaM2: heatFields.areaM2,
    mediumFlowKgPerS: heatFields.mediumFlowKgPerS,
    mediumHeatCapacityJPerKgK: heatFields.mediumHeatCapacityJPerKgK,
    batchTemperatureK: heatFields.positive('K', 'T', 'Temperature of the batch'),
    mediumInletTemperatureK: heatFields.mediumInletTemperatureK,
  }),
  outputs: z.strictObject({
    dutyW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat taken from the batch' }),
    mediumOutletTemperatureK: quantity({
      unit: 'K',
      symbol: 'T_out',
      description: 'Outlet temperature of the medium',
    }),
  }),
  formula: String.raw`Q = \left(1 - e^{-U A/(W c)}\right) W c\,(T - T_\mathrm{in})`,
  range: 'batch mixed and of constant temperature, medium without change of phase',
  source: [published('vdi-heat-atlas part C1')],
  compute: (inputs, log) => {
    const { overallCoefficientWPerM2K: U, areaM2: A, mediumInletTemperatureK: inlet } = inputs;
    const capacityFlow = inputs.mediumFlowKgPerS * inputs.mediumHeatCapacityJPerKgK;
    const effectiveness = -Math.expm1((-U * A) / capacityFlow);
    const dutyW = effectiveness * capacityFlow * (inputs.batchTemperatureK - inlet);
    const mediumOutletTemperatureK = inlet + dutyW / capacityFlow;
    log?.({
      symbol: 'ε',
      formula: '1 − exp(−U A/(W c))',
      substituted: `1 − exp(−${shown(U)} × ${shown(A)} / ${shown(capacityFlow)})`,
      value: effectiveness,
      unit: '1',
    });
    log?.({
      symbol: 'Q',
      formula: 'ε W c (T − T_in)',
      substituted: `${shown(effectiveness)} × ${shown(capacityFlow)} × (${shown(inputs.batchTemperatureK)} − ${shown(inlet)})`,
      value: dutyW,
      unit: 'W',
    });
    return succeed({ dutyW, mediumOutletTemperatureK });
  },
});
