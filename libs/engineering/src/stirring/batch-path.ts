import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { shown } from '../shown.js';
import { impellerFields, liquidFields } from './impeller-fields.js';
import { impellerTorque } from './impeller-torque.js';
import { powerOutput, reynoldsOutput, speedPerS, torqueOutput } from './stirring-fields.js';

const highTorque = quantity({ unit: 'N.m', symbol: 'M_high', description: 'Upper end of the torque' });
const highPower = quantity({ unit: 'W', symbol: 'P_high', description: 'Upper end of the power' });

const pathPoint = z.strictObject({
  name: z.string().min(1).optional().meta({ description: 'What happens at this point' }),
  ...liquidFields,
  speedPerS: speedPerS.meta({ symbol: 'N_i', description: 'Speed of rotation at this point' }).optional(),
});

const inputs = z.strictObject({
  ...impellerFields,
  points: z.array(pathPoint).min(1).max(200),
  speedPerS: speedPerS.meta({ description: 'Speed at every point without one of its own' }).optional(),
});

type Inputs = z.output<typeof inputs>;

type Numbered = readonly [index: number, point: Inputs['points'][number]];

interface PointResult {
  readonly name: string;
  readonly speedPerS: number;
  readonly reynolds: number;
  readonly torqueNm: number;
  readonly highTorqueNm: number;
  readonly powerW: number;
  readonly highPowerW: number;
}

const atPoint = (given: Inputs, [index, point]: Numbered, log?: StepLog): Outcome<PointResult> => {
  const { points: _points, speedPerS: common, ...impeller } = given;
  const { name = `point ${String(index + 1)}`, speedPerS: own, ...liquid } = point;
  const speed = own ?? common;
  const prefix = `points.${String(index)}.`;
  if (speed === undefined) {
    return missingInput(`${prefix}speedPerS`, 'give it, or speedPerS for the whole path');
  }
  const outcome = impellerTorque.compute({ ...impeller, ...liquid, speedPerS: speed }, log);
  if (!outcome.ok) {
    const { field } = outcome.error;
    const ofPoint = field !== undefined && field in pathPoint.shape;
    return ofPoint
      ? {
          ok: false,
          error: {
            ...outcome.error,
            field: `${prefix}${field}`,
            message: `${prefix}${outcome.error.message}`,
          },
        }
      : outcome;
  }
  const { reynolds, torqueNm, highTorqueNm, powerW, highPowerW } = outcome.value;
  return succeed({ name, speedPerS: speed, reynolds, torqueNm, highTorqueNm, powerW, highPowerW });
};

const worstOf = (
  results: readonly PointResult[],
  of: (result: PointResult) => number,
): PointResult | undefined =>
  results.reduce<PointResult | undefined>(
    (worst, result) => (worst === undefined || of(result) > of(worst) ? result : worst),
    undefined,
  );

/**
 * Torque and power of an impeller over the whole batch, at each point of viscosity and density, and the worst of them.
 *
 *   M = max_i M_high(μ_i, ρ_i, N_i),  P = max_i P_high(μ_i, ρ_i, N_i)
 *
 * @param impeller and vessel as in `impellerFields`
 * @param points    liquid by viscosity or power law, with density; speedPerS where the point has one of its own
 * @param speedPerS of every point without one [1/s]
 * @returns per point as stirring.impellerTorque; worst torque and worst power with the names of their points
 * @range as stirring.impellerTorque at every point
 * @error CALC_OUT_OF_RANGE, CALC_INVALID_INPUT with the point in the field
 * @source as stirring.impellerTorque
 */
export const batchPath = calculation({
  id: 'stirring.batchPath',
  title: 'Torque and power over the whole batch',
  inputs,
  outputs: z.strictObject({
    points: z.array(
      z.strictObject({
        name: z.string().meta({ description: 'What happens at this point' }),
        speedPerS,
        reynolds: reynoldsOutput,
        torqueNm: torqueOutput,
        highTorqueNm: highTorque,
        powerW: powerOutput,
        highPowerW: highPower,
      }),
    ),
    highTorqueNm: quantity({
      unit: 'N.m',
      symbol: 'M_max',
      description: 'Highest torque of the batch, upper end: what the coupling must carry',
    }),
    highestTorqueAt: z.string().meta({ description: 'Point of the highest torque' }),
    highPowerW: quantity({
      unit: 'W',
      symbol: 'P_max',
      description: 'Highest power of the batch, upper end: what the motor must give',
    }),
    highestPowerAt: z.string().meta({ description: 'Point of the highest power' }),
  }),
  formula: String.raw`M = \max_i M_\mathrm{high}(\mu_i, \rho_i, N_i),\quad P = \max_i P_\mathrm{high}(\mu_i, \rho_i, N_i)`,
  range: 'as stirring.impellerTorque at every point; between the points the batch is not looked at',
  source: impellerTorque.source,
  compute: (given, log) => {
    const results: PointResult[] = [];
    for (const numbered of given.points.entries()) {
      const result = atPoint(given, numbered);
      if (!result.ok) return result;
      results.push(result.value);
    }
    const byTorque = worstOf(results, ({ highTorqueNm }) => highTorqueNm);
    const byPower = worstOf(results, ({ highPowerW }) => highPowerW);
    const { highTorqueNm = 0, name: highestTorqueAt = '' } = byTorque ?? {};
    const { highPowerW = 0, name: highestPowerAt = '' } = byPower ?? {};
    if (log) {
      // One point is worked through: that of the highest torque.
      const worst = [...given.points.entries()].find(([index]) => results[index] === byTorque);
      if (worst !== undefined) atPoint(given, worst, log);
      const maximum = (of: (result: PointResult) => number): string =>
        `max(${results.map((result) => shown(of(result))).join('; ')})`;
      log({
        symbol: 'M_max',
        formula: 'max M_high,i',
        substituted: maximum((result) => result.highTorqueNm),
        value: highTorqueNm,
        unit: 'N.m',
        note: `at ${highestTorqueAt}, worked through above`,
      });
      log({
        symbol: 'P_max',
        formula: 'max P_high,i',
        substituted: maximum((result) => result.highPowerW),
        value: highPowerW,
        unit: 'W',
        note: `at ${highestPowerAt}`,
      });
    }
    return succeed({ points: results, highTorqueNm, highestTorqueAt, highPowerW, highestPowerAt });
  },
});
