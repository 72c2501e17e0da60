import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/** (1 − e^(−x))/x falls from 1 to 0; its x for a value in (0, 1), by bisection. */
const transferUnits = (ratio: number): number => {
  let low = 0;
  let high = Math.max(1, 2 / ratio);
  for (let step = 0; step < 80; step += 1) {
    const middle = (low + high) / 2;
    if (-Math.expm1(-middle) / middle > ratio) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/**
 * Flow of a medium, cooling water for instance, that removes a duty from a mixed batch of constant temperature.
 *
 *   Q = (1 − exp(−U A/(W c))) W c |T − T_in|, solved for W
 *
 * @param dutyW Q [W], overallCoefficientWPerM2K U, areaM2 A, batchTemperatureK T, mediumInletTemperatureK T_in
 * @param mediumHeatCapacityJPerKgK c
 * @returns mediumFlowKgPerS W [kg/s], mediumOutletTemperatureK [K]
 * @range Q < U A |T − T_in|: more cannot pass at any flow
 * @error CALC_OUT_OF_RANGE
 * @source vdi-heat-atlas part C1
 */
export const mediumFlowForDuty = calculation({
  id: 'heat.mediumFlowForDuty',
  title: 'Flow of the medium for a duty',
  inputs: z.strictObject({
    dutyW: heatFields.positive('W', 'Q', 'Heat flow to be removed or supplied'),
    overallCoefficientWPerM2K: heatFields.overallCoefficientWPerM2K,
    areaM2: heatFields.areaM2,
    batchTemperatureK: heatFields.positive('K', 'T', 'Temperature of the batch'),
    mediumInletTemperatureK: heatFields.mediumInletTemperatureK,
    mediumHeatCapacityJPerKgK: heatFields.mediumHeatCapacityJPerKgK,
  }),
  outputs: z.strictObject({
    mediumFlowKgPerS: quantity({ unit: 'kg/s', symbol: 'W', description: 'Flow of the medium' }),
    mediumOutletTemperatureK: quantity({ unit: 'K', symbol: 'T_out', description: 'Outlet of the medium' }),
  }),
  formula: String.raw`\dot Q = \left(1 - e^{-U A/(W c)}\right) W c\,\left|T - T_\mathrm{in}\right|`,
  range: 'Q < U A |T − T_in|',
  source: [published('vdi-heat-atlas part C1')],
  compute: (inputs, log) => {
    const { dutyW, batchTemperatureK, mediumInletTemperatureK, mediumHeatCapacityJPerKgK } = inputs;
    const conductance = inputs.overallCoefficientWPerM2K * inputs.areaM2;
    const most = conductance * Math.abs(batchTemperatureK - mediumInletTemperatureK);
    if (dutyW >= most * (1 - 1e-9)) {
      return outOfRange({
        field: 'dutyW',
        given: dutyW,
        unit: 'W',
        allowed: `less than ${shown(most)} W, which pass at unlimited flow; take more area, a better coefficient or a colder medium`,
      });
    }
    const capacityFlow = conductance / transferUnits(dutyW / most);
    const mediumFlowKgPerS = capacityFlow / mediumHeatCapacityJPerKgK;
    const direction = Math.sign(batchTemperatureK - mediumInletTemperatureK);
    const mediumOutletTemperatureK = mediumInletTemperatureK + (direction * dutyW) / capacityFlow;
    log?.({
      symbol: 'W',
      formula: 'W c with Q = (1 − exp(−U A/(W c))) W c |T − T_in|',
      substituted: `Q = ${shown(dutyW)} W, U A = ${shown(conductance)} W/K, |T − T_in| = ${shown(Math.abs(batchTemperatureK - mediumInletTemperatureK))} K, c = ${shown(mediumHeatCapacityJPerKgK)}`,
      value: mediumFlowKgPerS,
      unit: 'kg/s',
      note: 'by bisection',
    });
    return succeed({ mediumFlowKgPerS, mediumOutletTemperatureK });
  },
});
