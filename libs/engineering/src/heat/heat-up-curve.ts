import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { netHeat } from './first-order-time.js';
import { heatedBody, heatUpFields } from './heat-up.js';
import { firstTime, integrateCurve } from './integrate-curve.js';

/**
 * Temperature of a batch with its vessel over time while it is heated, by numerical integration; reaction heat may run with it.
 * For information: no rule decides by it (see heat.heatUp).
 *
 *   C dT/dt = min(P, U A (T_m − T)) − G (T − T_a) + Q_r
 *
 * @param as heat.heatUp (endTemperatureK only marks when it is reached), durationS, points, heatOfReactionW Q_r
 * @returns timesS, temperaturesK; reachedAfterS where the end temperature is reached within the duration [s]
 * @range batch mixed, medium at constant temperature, reaction heat constant
 * @error CALC_NOT_CONVERGED; as heat.heatUp
 * @source energy balance; integrator of Gragg, Bulirsch and Stoer (hairer-norsett-wanner-1)
 */
export const heatUpCurve = calculation({
  id: 'heat.heatUpCurve',
  title: 'Heating curve of a batch with its vessel',
  inputs: z.strictObject({
    ...heatUpFields,
    durationS: quantity(
      { unit: 's', symbol: 't_e', description: 'Duration of the curve' },
      z.number().positive(),
    ),
    points: quantity(
      { unit: '1', symbol: 'n', description: 'Number of points of the curve' },
      z.number().int().min(2).max(1000),
    ).default(61),
    heatOfReactionW: quantity({
      unit: 'W',
      symbol: 'Q_r',
      description: 'Heat of reaction set free meanwhile',
    }).default(0),
  }),
  outputs: z.strictObject({
    timesS: z.array(quantity({ unit: 's', symbol: 't', description: 'Time' })),
    temperaturesK: z.array(quantity({ unit: 'K', symbol: 'T', description: 'Batch temperature' })),
    reachedAfterS: quantity({
      unit: 's',
      symbol: 't_r',
      description: 'When the end temperature is reached, between two points linear',
    }).optional(),
  }),
  formula: String.raw`C\,\frac{dT}{dt} = \min\!\left(P,\ U A (T_m - T)\right) - G\,(T - T_a) + \dot Q_r`,
  range: 'batch mixed, vessel at batch temperature, constant medium temperature and reaction heat',
  source: [published('hairer-norsett-wanner-1 ch. II.9')],
  compute: (inputs, log) => {
    const body = heatedBody(inputs);
    if (!body.ok) return body;
    const { capacityJPerK } = body.value;
    const { startTemperatureK, durationS, points } = inputs;
    const curve = integrateCurve({
      start: [startTemperatureK],
      durationS,
      points,
      rates: ([temperatureK = startTemperatureK]) => [
        (netHeat(body.value, temperatureK) + inputs.heatOfReactionW) / capacityJPerK,
      ],
    });
    if (!curve.ok) return curve;
    const temperaturesK = curve.value.flat();
    const timesS = temperaturesK.map((_temperature, index) => (index * durationS) / (points - 1));
    const reachedAfterS = firstTime(
      { timesS, values: temperaturesK },
      (temperatureK) => inputs.endTemperatureK - temperatureK,
    );
    log?.({
      symbol: 'T(t_e)',
      formula: 'integrated',
      substituted: `${shown(inputs.startTemperatureK)} K, ${shown(inputs.durationS)} s, ${String(inputs.points)} points`,
      value: temperaturesK.at(-1) ?? inputs.startTemperatureK,
      unit: 'K',
      note: 'for information; heat.heatUp decides',
    });
    return succeed({ timesS, temperaturesK, ...(reachedAfterS === undefined ? {} : { reachedAfterS }) });
  },
});
