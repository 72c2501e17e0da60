import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { type HeatedBody, heatingTime, limitedBy, netHeat } from './first-order-time.js';
import { heatFields } from './heat-fields.js';

/** What heats a batch with its vessel, and what it loses. Shared by the closed form and the curve. */
export const heatUpFields = {
  batchMassKg: heatFields.batchMassKg,
  heatCapacityJPerKgK: heatFields.heatCapacityJPerKgK,
  vesselMassKg: quantity(
    { unit: 'kg', symbol: 'm_v', description: 'Mass of the vessel that is heated with the batch' },
    z.number().min(0),
  ).default(0),
  vesselHeatCapacityJPerKgK: heatFields
    .positive('J/(kg.K)', 'c_v', 'Heat capacity of the vessel; 500 for steel where nothing is given')
    .default(500),
  startTemperatureK: heatFields.startTemperatureK,
  endTemperatureK: heatFields.endTemperatureK,
  heaterPowerW: heatFields
    .positive('W', 'P', 'Power of the heater, or heating power of the circulator')
    .optional(),
  overallCoefficientWPerM2K: heatFields
    .positive('W/(m2.K)', 'U', 'Overall coefficient of the jacket, lower end of its band')
    .optional(),
  areaM2: heatFields.positive('m2', 'A', 'Heat transfer area of the jacket').optional(),
  mediumTemperatureK: heatFields.positive('K', 'T_m', 'Temperature of the medium').optional(),
  lossWPerK: quantity(
    { unit: 'W/K', symbol: 'G', description: 'Heat loss to the room per kelvin' },
    z.number().min(0),
  ).default(0),
  ambientTemperatureK: heatFields.positive('K', 'T_a', 'Temperature of the room').default(293.15),
} as const;

type HeatUpInputs = z.output<z.ZodObject<typeof heatUpFields>>;

/** The lumped body of the inputs. @error CALC_INVALID_INPUT, CALC_OUT_OF_RANGE */
export const heatedBody = (inputs: HeatUpInputs): Outcome<HeatedBody> => {
  const { heaterPowerW, overallCoefficientWPerM2K, areaM2, mediumTemperatureK, startTemperatureK } = inputs;
  if (inputs.endTemperatureK < startTemperatureK) {
    return outOfRange({
      field: 'endTemperatureK',
      given: inputs.endTemperatureK,
      unit: 'K',
      allowed: `at least startTemperatureK (${shown(startTemperatureK)} K); for cooling see heat.batchTimeFlowingMedium`,
    });
  }
  const base = {
    capacityJPerK:
      inputs.batchMassKg * inputs.heatCapacityJPerKgK +
      inputs.vesselMassKg * inputs.vesselHeatCapacityJPerKgK,
    lossWPerK: inputs.lossWPerK,
    ambientTemperatureK: inputs.ambientTemperatureK,
    powerW: heaterPowerW,
  };
  if (overallCoefficientWPerM2K === undefined && areaM2 === undefined && mediumTemperatureK === undefined) {
    return heaterPowerW === undefined
      ? missingInput(
          'heaterPowerW',
          'a heater power, or overallCoefficientWPerM2K, areaM2 and mediumTemperatureK',
        )
      : succeed(base);
  }
  if (overallCoefficientWPerM2K === undefined || areaM2 === undefined || mediumTemperatureK === undefined) {
    const field =
      overallCoefficientWPerM2K === undefined
        ? 'overallCoefficientWPerM2K'
        : areaM2 === undefined
          ? 'areaM2'
          : 'mediumTemperatureK';
    return missingInput(field, 'overallCoefficientWPerM2K, areaM2 and mediumTemperatureK belong together');
  }
  return succeed({
    ...base,
    transfer: { conductanceWPerK: overallCoefficientWPerM2K * areaM2, mediumTemperatureK },
  });
};

/**
 * Time to heat a batch with its vessel, with losses, by a heater, by a jacket, or by a jacket whose circulator has a limited
 * power. Closed form, on the safe side: the vessel follows the batch, the loss is that of each temperature, U is the
 * lower end of its band.
 *
 *   C dT/dt = min(P, U A (T_m − T)) − G (T − T_a),  C = M c + m_v c_v
 *
 * @param batchMassKg, heatCapacityJPerKgK, vesselMassKg, vesselHeatCapacityJPerKgK
 * @param startTemperatureK, endTemperatureK [K]
 * @param heaterPowerW and/or overallCoefficientWPerM2K with areaM2 and mediumTemperatureK
 * @param lossWPerK G, ambientTemperatureK T_a
 * @returns timeS [s], limitedBy, lossAtEndW, reserveAtEndW: what is left for heating at the end [W]
 * @range batch mixed, medium at constant temperature
 * @error CALC_OUT_OF_RANGE where the end is not reached; CALC_INVALID_INPUT where the heating is not given
 * @source kern-1950 ch. 18 with loss; energy balance
 */
export const heatUp = calculation({
  id: 'heat.heatUp',
  title: 'Heating time of a batch with its vessel',
  inputs: z.strictObject(heatUpFields),
  outputs: z.strictObject({
    timeS: heatFields.timeS,
    limitedBy: z
      .enum(['heater power', 'heat transfer', 'both'])
      .meta({ description: 'What limits the heating; both: power first, transfer at the end' }),
    lossAtEndW: quantity({ unit: 'W', symbol: 'Q_loss', description: 'Heat loss at the end' }),
    reserveAtEndW: quantity({ unit: 'W', symbol: 'Q_r', description: 'Heat left for heating at the end' }),
  }),
  formula: String.raw`C\,\frac{dT}{dt} = \min\!\left(P,\ U A (T_m - T)\right) - G\,(T - T_a)`,
  range: 'batch mixed, vessel at batch temperature, medium at constant temperature',
  source: [published('kern-1950 ch. 18'), commonPractice('500 J/(kg·K) for steel, from memory')],
  compute: (inputs, log) => {
    const body = heatedBody(inputs);
    if (!body.ok) return body;
    const { startTemperatureK, endTemperatureK, ambientTemperatureK, lossWPerK } = inputs;
    const reserveAtEndW = netHeat(body.value, endTemperatureK);
    if (reserveAtEndW <= 0) {
      return outOfRange({
        field: 'endTemperatureK',
        given: endTemperatureK,
        unit: 'K',
        allowed: `a temperature that heater and medium reach: ${shown(-reserveAtEndW)} W are missing at this one`,
      });
    }
    const timeS = heatingTime(body.value, startTemperatureK, endTemperatureK);
    const lossAtEndW = lossWPerK * (endTemperatureK - ambientTemperatureK);
    log?.({
      symbol: 'C',
      formula: 'M c + m_v c_v',
      substituted: `${shown(inputs.batchMassKg)} × ${shown(inputs.heatCapacityJPerKgK)} + ${shown(inputs.vesselMassKg)} × ${shown(inputs.vesselHeatCapacityJPerKgK)}`,
      value: body.value.capacityJPerK,
      unit: 'J/K',
    });
    log?.({
      symbol: 't',
      formula: '∫ C dT / (min(P, U A (T_m − T)) − G (T − T_a))',
      substituted: `C = ${shown(body.value.capacityJPerK)} J/K, P = ${inputs.heaterPowerW === undefined ? 'not limited' : `${shown(inputs.heaterPowerW)} W`}, U A = ${body.value.transfer === undefined ? 'heater in contact' : `${shown(body.value.transfer.conductanceWPerK)} W/K, T_m = ${shown(body.value.transfer.mediumTemperatureK)} K`}, G = ${shown(lossWPerK)} W/K, ${shown(startTemperatureK)} to ${shown(endTemperatureK)} K`,
      value: timeS,
      unit: 's',
      note: 'closed form, power first, heat transfer after it',
    });
    return succeed({
      timeS,
      limitedBy: limitedBy(body.value, startTemperatureK, endTemperatureK),
      lossAtEndW,
      reserveAtEndW,
    });
  },
});
