import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { approachLogarithm } from './approach.js';
import { heatFields } from './heat-fields.js';

interface Point {
  readonly temperatureK: number;
  readonly coefficient: number;
}

const invalidPoints = (message: string): Outcome<never> =>
  fail({
    code: 'CALC_INVALID_INPUT',
    message: `coefficientTemperaturesK: ${message}`,
    field: 'coefficientTemperaturesK',
  });

const pointsOf = (
  temperatures: readonly number[],
  coefficients: readonly number[],
): Outcome<readonly Point[]> => {
  if (temperatures.length !== coefficients.length) {
    return invalidPoints(
      `${String(temperatures.length)} temperatures and ${String(coefficients.length)} coefficients given; as many of each are needed`,
    );
  }
  const points = temperatures.map((temperatureK, i) => ({ temperatureK, coefficient: coefficients[i] ?? 0 }));
  const rising = points.every(
    (point, i) => i === 0 || point.temperatureK > (points[i - 1]?.temperatureK ?? 0),
  );
  return rising ? succeed(points) : invalidPoints('temperatures that rise from point to point are needed');
};

/** Slope and value of U at T_m, extended from the straight line through two points. */
const lineThrough = (left: Point, right: Point, mediumTemperatureK: number) => {
  const slope = (right.coefficient - left.coefficient) / (right.temperatureK - left.temperatureK);
  return { slope, atMedium: left.coefficient + slope * (mediumTemperatureK - left.temperatureK) };
};

/** ∫ dT / (U(T) |T_m − T|) over one straight piece of U, in closed form. */
const pieceIntegral = (left: Point, right: Point, mediumTemperatureK: number): number => {
  const { slope, atMedium } = lineThrough(left, right, mediumTemperatureK);
  const [first, second] = [mediumTemperatureK - left.temperatureK, mediumTemperatureK - right.temperatureK];
  const integral =
    Math.abs(atMedium) > 1e-7 * left.coefficient
      ? (Math.log(right.coefficient / left.coefficient) - Math.log(second / first)) / atMedium
      : (1 / first - 1 / second) / slope;
  return Math.abs(integral);
};

/** The pieces of U between two temperatures, cut at their ends. */
const piecesBetween = (
  points: readonly Point[],
  low: number,
  high: number,
): readonly (readonly [Point, Point])[] =>
  points.slice(1).flatMap((right, i) => {
    const left = points[i];
    if (left === undefined || right.temperatureK <= low || left.temperatureK >= high) return [];
    const cut = (temperatureK: number): Point => ({
      temperatureK,
      coefficient:
        left.coefficient +
        ((right.coefficient - left.coefficient) * (temperatureK - left.temperatureK)) /
          (right.temperatureK - left.temperatureK),
    });
    return [[cut(Math.max(low, left.temperatureK)), cut(Math.min(high, right.temperatureK))] as const];
  });

/**
 * Time to heat or cool a stirred batch by a medium of constant temperature where U depends on the batch temperature.
 *
 *   t = ∫ M C dT / (U(T) A (T_m − T)),  U linear between the given points, integrated in closed form
 *
 * @param batchMassKg              M [kg]
 * @param heatCapacityJPerKgK      C [J/(kg·K)]
 * @param areaM2                   A [m²]
 * @param mediumTemperatureK       T_m [K]
 * @param startTemperatureK        T1 [K]
 * @param endTemperatureK          T2, between T1 and T_m [K]
 * @param coefficientTemperaturesK rising batch temperatures that cover T1 to T2 [K]
 * @param coefficientsWPerM2K      U at these temperatures [W/(m²·K)]
 * @returns timeS t [s]
 * @range batch mixed, vessel and losses neglected
 * @error CALC_OUT_OF_RANGE where T2 is not reached or the points do not cover T1 to T2; CALC_INVALID_INPUT
 * @source kern-1950 ch. 18
 */
export const batchTimeVariableCoefficient = calculation({
  id: 'heat.batchTimeVariableCoefficient',
  title: 'Heating or cooling time, coefficient depending on temperature',
  inputs: z.strictObject({
    batchMassKg: heatFields.batchMassKg,
    heatCapacityJPerKgK: heatFields.heatCapacityJPerKgK,
    areaM2: heatFields.areaM2,
    mediumTemperatureK: heatFields.mediumTemperatureK,
    startTemperatureK: heatFields.startTemperatureK,
    endTemperatureK: heatFields.endTemperatureK,
    coefficientTemperaturesK: z
      .array(
        quantity(
          { unit: 'K', symbol: 'T_i', description: 'Batch temperature of a point' },
          z.number().positive(),
        ),
      )
      .min(2),
    coefficientsWPerM2K: z
      .array(
        quantity(
          { unit: 'W/(m2.K)', symbol: 'U_i', description: 'Overall coefficient at a point' },
          z.number().positive(),
        ),
      )
      .min(2),
  }),
  outputs: z.strictObject({ timeS: heatFields.timeS }),
  formula: String.raw`t = \int_{T_1}^{T_2}\frac{M\,C\,dT}{U(T)\,A\,(T_m - T)}`,
  range: 'batch mixed, vessel and losses neglected; the points cover T1 to T2, T2 between T1 and T_m',
  source: [published('kern-1950 ch. 18')],
  compute: (inputs, log) => {
    const reached = approachLogarithm(inputs);
    if (!reached.ok) return reached;
    const points = pointsOf(inputs.coefficientTemperaturesK, inputs.coefficientsWPerM2K);
    if (!points.ok) return points;
    const { startTemperatureK, endTemperatureK, mediumTemperatureK, areaM2 } = inputs;
    const low = Math.min(startTemperatureK, endTemperatureK);
    const high = Math.max(startTemperatureK, endTemperatureK);
    const [lowest, highest] = [points.value[0]?.temperatureK ?? 0, points.value.at(-1)?.temperatureK ?? 0];
    if (low < lowest || high > highest) {
      return outOfRange({
        field:
          low < lowest === startTemperatureK <= endTemperatureK ? 'startTemperatureK' : 'endTemperatureK',
        given: low < lowest ? low : high,
        unit: 'K',
        allowed: `${shown(lowest)} to ${shown(highest)} K, for which coefficients are given`,
      });
    }
    const integral = piecesBetween(points.value, low, high).reduce(
      (sum, [left, right]) => sum + pieceIntegral(left, right, mediumTemperatureK),
      0,
    );
    const timeS = ((inputs.batchMassKg * inputs.heatCapacityJPerKgK) / areaM2) * integral;
    log?.({
      symbol: 't',
      formula: 'M C/A ∫ dT/(U(T) (T_m − T))',
      substituted: `${shown(inputs.batchMassKg)} × ${shown(inputs.heatCapacityJPerKgK)} / ${shown(areaM2)} × ${shown(integral)}`,
      value: timeS,
      unit: 's',
      note: `closed form on ${String(points.value.length - 1)} straight pieces of U`,
    });
    return succeed({ timeS });
  },
});
