import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { type Circulator, circulatorPower, temperingRates, type TemperedBatch } from './circulator.js';
import { heatFields } from './heat-fields.js';
import { heatUpFields } from './heat-up.js';
import { firstTime, integrateCurve } from './integrate-curve.js';

const { positive } = heatFields;

const atLeastZero = (unit: string, symbol: string, description: string): z.ZodNumber =>
  quantity({ unit, symbol, description }, z.number().min(0));

const inputs = z.strictObject({
  batchMassKg: heatUpFields.batchMassKg,
  heatCapacityJPerKgK: heatUpFields.heatCapacityJPerKgK,
  vesselMassKg: heatUpFields.vesselMassKg,
  vesselHeatCapacityJPerKgK: heatUpFields.vesselHeatCapacityJPerKgK,
  startTemperatureK: heatUpFields.startTemperatureK,
  endTemperatureK: heatUpFields.endTemperatureK,
  overallCoefficientWPerM2K: positive(
    'W/(m2.K)',
    'U',
    'Overall coefficient of the jacket, lower end of its band',
  ),
  areaM2: positive('m2', 'A', 'Heat transfer area of the jacket at this fill'),
  lossWPerK: heatUpFields.lossWPerK,
  ambientTemperatureK: heatUpFields.ambientTemperatureK,
  heatOfReactionW: quantity({ unit: 'W', symbol: 'Q_r', description: 'Heat of reaction set free' }).default(
    0,
  ),
  circulatorPowers: z
    .array(
      z.strictObject({
        temperatureK: positive('K', 'T_i', 'Temperature of the medium'),
        heatingW: atLeastZero('W', 'P_h', 'Heating power at this temperature'),
        coolingW: atLeastZero('W', 'P_c', 'Cooling power at this temperature'),
      }),
    )
    .min(1)
    .max(50),
  pumpPowerW: atLeastZero('W', 'P_p', 'Heat that the pump leaves in the medium').default(0),
  mediumFlowKgPerS: heatFields.mediumFlowKgPerS,
  mediumHeatCapacityJPerKgK: heatFields.mediumHeatCapacityJPerKgK,
  mediumMassKg: positive('kg', 'm_m', 'Mass of the medium in bath, hoses and jacket'),
  mediumStartTemperatureK: positive('K', 'T_m0', 'Medium at the start; the batch’s unless given').optional(),
  lowestMediumTemperatureK: positive('K', 'T_lo', 'Lowest temperature of the medium'),
  highestMediumTemperatureK: positive('K', 'T_hi', 'Highest temperature of the medium'),
  differenceLimitK: positive(
    'K',
    'ΔT_hi',
    'Largest difference allowed between medium and batch, for glass; not limited unless given',
  ).optional(),
  mediumLossWPerK: atLeastZero('W/K', 'G_m', 'Heat loss of circulator and hoses to the room').default(0),
  controlTimeConstantS: positive(
    's',
    'τ',
    'Time constant with which the controller moves the medium',
  ).default(60),
  toleranceK: positive('K', 'δ', 'How near the end temperature counts as reached').default(1),
  durationS: positive('s', 't_e', 'Duration of the curve'),
  points: quantity(
    { unit: '1', symbol: 'n', description: 'Number of points of the curve' },
    z.number().int().min(2).max(1000),
  ).default(61),
});

type Inputs = z.output<typeof inputs>;

/** The circulator of the inputs; its table must reach over its range. */
const circulatorOf = (given: Inputs): Outcome<Circulator> => {
  const { circulatorPowers: powers, lowestMediumTemperatureK: lowest } = given;
  const highest = given.highestMediumTemperatureK;
  if (highest <= lowest) {
    return outOfRange({
      field: 'highestMediumTemperatureK',
      given: highest,
      unit: 'K',
      allowed: `above lowestMediumTemperatureK (${shown(lowest)} K)`,
    });
  }
  const temperatures = powers.map(({ temperatureK }) => temperatureK);
  const falling = temperatures.find((temperature, i) => i > 0 && temperature <= (temperatures[i - 1] ?? 0));
  if (falling !== undefined) {
    return outOfRange({
      field: 'circulatorPowers',
      given: falling,
      unit: 'K',
      allowed: 'temperatures that rise from point to point',
    });
  }
  const [first = 0, last = 0] = [temperatures[0], temperatures.at(-1)];
  if (powers.length > 1 && (first > lowest || last < highest)) {
    return outOfRange({
      field: 'circulatorPowers',
      given: first > lowest ? first : last,
      unit: 'K',
      allowed: `one point for all temperatures, or points from ${shown(lowest)} to ${shown(highest)} K, the range of the medium`,
    });
  }
  return succeed({
    powers,
    pumpW: given.pumpPowerW,
    capacityJPerK: given.mediumMassKg * given.mediumHeatCapacityJPerKgK,
    lossWPerK: given.mediumLossWPerK,
    lowestK: lowest,
    highestK: highest,
    timeConstantS: given.controlTimeConstantS,
  });
};

const batchOf = (given: Inputs): TemperedBatch => {
  const flow = given.mediumFlowKgPerS * given.mediumHeatCapacityJPerKgK;
  const conductance = given.overallCoefficientWPerM2K * given.areaM2;
  return {
    capacityJPerK:
      given.batchMassKg * given.heatCapacityJPerKgK + given.vesselMassKg * given.vesselHeatCapacityJPerKgK,
    lossWPerK: given.lossWPerK,
    reactionW: given.heatOfReactionW,
    exchangeWPerK: flow * -Math.expm1(-conductance / flow),
    ambientK: given.ambientTemperatureK,
    targetK: given.endTemperatureK,
    differenceK: given.differenceLimitK ?? Infinity,
  };
};

/**
 * Temperatures of a batch and of its heat carrier over time, heated or cooled by a real circulator: power that depends on
 * temperature, finite flow, limits of the medium, losses, a controller in cascade. For information: no rule decides by it.
 *
 *   C dT/dt = ε W c (T_m − T) − G (T − T_a) + Q_r,            ε = 1 − exp(−U A/(W c))
 *   m_m c dT_m/dt = P(T_m) + P_p − ε W c (T_m − T) − G_m (T_m − T_a),  −P_c(T_m) ≤ P ≤ P_h(T_m)
 *
 * @param batch, vessel, jacket and losses as heat.heatUp
 * @param circulatorPowers heating and cooling power [W] over the temperature of the medium [K], linear between
 * @param mediumFlowKgPerS W, mediumHeatCapacityJPerKgK c, mediumMassKg m_m
 * @param lowestMediumTemperatureK, highestMediumTemperatureK, differenceLimitK limits of the medium [K]
 * @param controlTimeConstantS τ; toleranceK δ; durationS; points
 * @returns timesS, temperaturesK, mediumTemperaturesK, powersW; reachedAfterS, highestDifferenceK
 * @range batch mixed, vessel at its temperature; medium mixed; constant U, c and reaction heat
 * @error CALC_OUT_OF_RANGE, CALC_NOT_CONVERGED
 * @source energy balances; exchange with a flowing medium kern-1950 ch. 18; cascade of gain 10: common practice
 */
export const circulatorCurve = calculation({
  id: 'heat.circulatorCurve',
  title: 'Heating or cooling curve with a circulator',
  inputs,
  outputs: z.strictObject({
    timesS: z.array(quantity({ unit: 's', symbol: 't', description: 'Time' })),
    temperaturesK: z.array(quantity({ unit: 'K', symbol: 'T', description: 'Batch temperature' })),
    mediumTemperaturesK: z.array(quantity({ unit: 'K', symbol: 'T_m', description: 'Medium temperature' })),
    powersW: z.array(
      quantity({ unit: 'W', symbol: 'P', description: 'Power of the circulator; negative: it cools' }),
    ),
    reachedAfterS: quantity({
      unit: 's',
      symbol: 't_r',
      description: 'When the end temperature is reached within its tolerance, between two points linear',
    }).optional(),
    highestDifferenceK: quantity({
      unit: 'K',
      symbol: 'ΔT',
      description: 'Largest difference between medium and batch at a point of the curve',
    }),
  }),
  formula: String.raw`C\frac{dT}{dt} = \varepsilon W c\,(T_m - T) - G\,(T - T_a) + \dot Q_r,\quad m_m c\,\frac{dT_m}{dt} = P(T_m) + P_p - \varepsilon W c\,(T_m - T) - G_m (T_m - T_a)`,
  range:
    'batch and medium mixed, vessel at batch temperature; constant coefficient and heat capacities; points of the circulator over the whole range of its medium',
  source: [
    published('kern-1950 ch. 18'),
    published('hairer-norsett-wanner-1 ch. II.9'),
    commonPractice('circulator-practice cascade of gain 10, time constant 60 s'),
  ],
  compute: (given, log) => {
    const circulator = circulatorOf(given);
    if (!circulator.ok) return circulator;
    const batch = batchOf(given);
    const pair = ([batchK = 0, mediumK = 0]: readonly number[]) => [batchK, mediumK] as const;
    const curve = integrateCurve({
      start: [given.startTemperatureK, given.mediumStartTemperatureK ?? given.startTemperatureK],
      durationS: given.durationS,
      points: given.points,
      rates: (state) => temperingRates(circulator.value, batch, pair(state)),
    });
    if (!curve.ok) return curve;
    const states = curve.value.map(pair);
    const timesS = states.map((_state, i) => (i * given.durationS) / (given.points - 1));
    const temperaturesK = states.map(([batchK]) => batchK);
    // Signed, so that a point beyond the end counts as past it.
    const direction = Math.sign(given.endTemperatureK - given.startTemperatureK);
    const reachedAfterS = firstTime(
      { timesS, values: temperaturesK },
      (batchK) => direction * (given.endTemperatureK - batchK) - given.toleranceK,
    );
    const highestDifferenceK = Math.max(...states.map(([batchK, mediumK]) => Math.abs(mediumK - batchK)));
    log?.({
      symbol: 'ε W c',
      formula: 'W c (1 − exp(−U A/(W c)))',
      substituted: `W c = ${shown(given.mediumFlowKgPerS * given.mediumHeatCapacityJPerKgK)} W/K, U A = ${shown(given.overallCoefficientWPerM2K * given.areaM2)} W/K`,
      value: batch.exchangeWPerK,
      unit: 'W/K',
    });
    log?.({
      symbol: 'T(t_e)',
      formula: 'integrated',
      substituted: `${shown(given.startTemperatureK)} K, ${shown(given.durationS)} s, ${String(given.points)} points`,
      value: temperaturesK.at(-1) ?? given.startTemperatureK,
      unit: 'K',
      note: 'for information; closed forms decide',
    });
    return succeed({
      timesS,
      temperaturesK,
      mediumTemperaturesK: states.map(([, mediumK]) => mediumK),
      powersW: states.map((state) => circulatorPower(circulator.value, batch, state)),
      ...(reachedAfterS === undefined ? {} : { reachedAfterS }),
      highestDifferenceK,
    });
  },
});
