import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';
import { magnetTorqueFactor } from './magnet-derating.js';
import table from './magnets.json' with { type: 'json' };

export const magnetKinds = ['NdFeB', 'SmCo5', 'Sm2Co17', 'hard ferrite'] as const;

/** Slip torque over working torque: working torque is kept to 50 to 67 % of slip torque at temperature. */
const usualServiceFactor = 1.5;
const usualRatingTemperature = 293.15;

/**
 * Working torque of a magnetic coupling at temperature.
 *
 *   T_w = T_r (1 + α (T − T_0))² / f_s
 *
 * Below the rating temperature the rated torque counts, no more.
 *
 * @param ratedTorqueNm      T_r, slip torque at the rating temperature [N·m]
 * @param ratingTemperatureK T_0, 293.15 K unless given [K]
 * @param temperatureK       of the magnets [K]
 * @param serviceFactor      f_s, 1.5 unless given; 1 where the rating holds it already [-]
 * @returns workingTorqueNm, slipTorqueNm at temperature [N·m], torqueFactor [-], highestTemperatureK [K]
 * @range from 200 K to the temperature limit of the magnet
 * @error CALC_OUT_OF_RANGE above the magnet's temperature limit, where part of the loss stays
 * @source magnets.json; torque ~ Br² from memory, unverified; service factor: common practice
 */
export const deratedTorque = calculation({
  id: 'coupling.deratedTorque',
  title: 'Working torque of a magnetic coupling at temperature',
  inputs: z.strictObject({
    magnet: z.enum(magnetKinds).meta({ description: 'Material of the magnets' }),
    ratedTorqueNm: quantity(
      { unit: 'N.m', symbol: 'T_r', description: 'Slip torque at the rating temperature' },
      z.number().positive(),
    ),
    ratingTemperatureK: quantity(
      { unit: 'K', symbol: 'T_0', description: 'Temperature of the rating; 293.15 K unless given' },
      z.number().min(200).max(600),
    ).optional(),
    temperatureK: quantity(
      { unit: 'K', symbol: 'T', description: 'Temperature of the magnets' },
      z.number().min(200),
    ),
    serviceFactor: quantity(
      { unit: '1', symbol: 'f_s', description: 'Slip torque over working torque; 1.5 unless given' },
      z.number().min(1).max(5),
    ).optional(),
  }),
  outputs: z.strictObject({
    workingTorqueNm: quantity({
      unit: 'N.m',
      symbol: 'T_w',
      description: 'Torque that the coupling may carry',
    }),
    slipTorqueNm: quantity({ unit: 'N.m', symbol: 'T_s', description: 'Slip torque at temperature' }),
    torqueFactor: quantity({ unit: '1', symbol: 'k_T', description: 'Share of the rated torque' }),
    highestTemperatureK: quantity({
      unit: 'K',
      symbol: 'T_max',
      description: 'Temperature limit of the magnet',
    }),
  }),
  formula: String.raw`T_w = \frac{T_r\,\left(1 + \alpha (T - T_0)\right)^2}{f_s}`,
  range:
    '200 K to the temperature limit of the magnet: 150 °C NdFeB, 250 °C SmCo5, 300 °C Sm2Co17, 250 °C hard ferrite',
  source: [
    published('magnet-temperature-coefficients'),
    fromMemory('torque proportional to the square of the remanence; hard ferrite 250 °C'),
    commonPractice('working torque at most 67 % of the slip torque'),
  ],
  compute: (given, log) => {
    const row = table.rows.find(({ magnet }) => magnet === given.magnet);
    if (row === undefined) return missingInput('magnet', `one of ${magnetKinds.join(', ')}`);
    const { coefficientPercentPerK: α, highestTemperatureK: T_max } = row;
    const T = given.temperatureK;
    if (T > T_max) {
      return outOfRange({
        field: 'temperatureK',
        given: T,
        unit: 'K',
        allowed: `up to ${shown(T_max)} K for ${given.magnet}; above it part of the loss stays: take another magnet or keep the coupling cooler`,
      });
    }
    const T_0 = given.ratingTemperatureK ?? usualRatingTemperature;
    const rise = Math.max(0, T - T_0);
    const torqueFactor = magnetTorqueFactor(α, rise) ?? 0;
    const slipTorqueNm = given.ratedTorqueNm * torqueFactor;
    const workingTorqueNm = slipTorqueNm / (given.serviceFactor ?? usualServiceFactor);
    log?.(
      formulaStep({
        symbol: 'k_T',
        formula: '(1 + α · ΔT / 100)²',
        where: { α, ΔT: rise },
        value: torqueFactor,
        unit: '1',
        note: `${given.magnet}: ${row.source}; torque ~ Br² from memory, unverified`,
      }),
    );
    log?.(
      formulaStep({
        symbol: 'T_w',
        formula: 'T_r · k_T / f_s',
        where: {
          T_r: given.ratedTorqueNm,
          k_T: torqueFactor,
          f_s: given.serviceFactor ?? usualServiceFactor,
        },
        value: workingTorqueNm,
        unit: 'N.m',
        note: given.serviceFactor === undefined ? 'service factor: common practice' : undefined,
      }),
    );
    return succeed({ workingTorqueNm, slipTorqueNm, torqueFactor, highestTemperatureK: T_max });
  },
});
