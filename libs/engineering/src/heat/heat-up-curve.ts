import { Outcome as Integration, Solver } from './odex-solver.js';
import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { type HeatedBody, netHeat } from './first-order-time.js';
import { heatedBody, heatUpFields } from './heat-up.js';

interface Course {
  readonly startTemperatureK: number;
  readonly durationS: number;
  readonly points: number;
  readonly heatOfReactionW: number;
}

const relativeTolerance = 1e-8;

const integrate = (body: HeatedBody, course: Course): Outcome<readonly number[]> => {
  const temperatures = [course.startTemperatureK];
  const interval = course.durationS / (course.points - 1);
  for (let point = 1; point < course.points; point += 1) {
    const solver = new Solver(1);
    solver.relativeTolerance = relativeTolerance;
    solver.absoluteTolerance = relativeTolerance;
    solver.maxStepSize = interval;
    const from = temperatures[point - 1] ?? course.startTemperatureK;
    const { y, outcome } = solver.solve(
      (_time, [temperatureK = from]) => [
        (netHeat(body, temperatureK) + course.heatOfReactionW) / body.capacityJPerK,
      ],
      0,
      [from],
      interval,
    );
    const reached = y[0];
    if (outcome !== Integration.Converged || reached === undefined || !Number.isFinite(reached)) {
      return fail({
        code: 'CALC_NOT_CONVERGED',
        message: `durationS: ${shown(course.durationS)} s given; the integration stopped after ${shown(interval * point)} s. Take a shorter duration or more points`,
        field: 'durationS',
        given: course.durationS,
      });
    }
    temperatures.push(reached);
  }
  return succeed(temperatures);
};

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
    const curve = integrate(body.value, inputs);
    if (!curve.ok) return curve;
    const temperaturesK = [...curve.value];
    const interval = inputs.durationS / (inputs.points - 1);
    const timesS = temperaturesK.map((_temperature, index) => index * interval);
    const after = temperaturesK.findIndex((temperature) => temperature >= inputs.endTemperatureK);
    const [before, reached] = [temperaturesK[after - 1], temperaturesK[after]];
    const reachedAfterS =
      reached === undefined
        ? undefined
        : before === undefined
          ? 0
          : (after - 1 + (inputs.endTemperatureK - before) / (reached - before)) * interval;
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
