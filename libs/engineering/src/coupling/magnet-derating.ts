import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';

/** (1 + α ΔT / 100)², or nothing where the remanence would be gone. */
export const magnetTorqueFactor = (percentPerK: number, rise: number): number | undefined => {
  const remanence = 1 + (percentPerK * rise) / 100;
  return remanence > 0 ? remanence ** 2 : undefined;
};

/**
 * Share of the torque of a magnetic coupling that is left at temperature, both magnets equally warm. Reversible
 * loss only: above the magnet's temperature limit part of the loss stays.
 *
 *   T/T_0 = (1 + α ΔT)²
 *
 * @param temperatureCoefficientPercentPerK α of the remanence, negative as a rule [%/K]
 * @param temperatureRiseK                  ΔT above the temperature at which the torque is rated [K]
 * @returns torqueFactor [-]
 * @range 1 + α ΔT > 0, ΔT from −100 to 400 K
 * @error CALC_OUT_OF_RANGE outside the range
 * @source magnet data sheets (α); torque ~ Br² from memory, unverified
 */
export const magnetDerating = calculation({
  id: 'coupling.magnetDerating',
  title: 'Torque of a magnetic coupling at temperature',
  inputs: z.strictObject({
    temperatureCoefficientPercentPerK: quantity(
      { unit: '%/K', symbol: 'α', description: 'Temperature coefficient of the remanence' },
      z.number().min(-1).max(1),
    ),
    temperatureRiseK: quantity(
      { unit: 'K', symbol: 'ΔT', description: 'Rise above the temperature of the rated torque' },
      z.number().min(-100).max(400),
    ),
  }),
  outputs: z.strictObject({
    torqueFactor: quantity({ unit: '1', symbol: 'k_T', description: 'Share of the rated torque' }),
  }),
  formula: String.raw`k_T = (1 + \alpha\,\Delta T)^2`,
  range: '1 + α ΔT > 0; −100 K ≤ ΔT ≤ 400 K; below the temperature limit of the magnet',
  source: [
    published('magnet-temperature-coefficients'),
    fromMemory('torque proportional to the square of the remanence'),
  ],
  compute: ({ temperatureCoefficientPercentPerK: α, temperatureRiseK: ΔT }, log) => {
    const torqueFactor = magnetTorqueFactor(α, ΔT);
    if (torqueFactor === undefined) {
      return outOfRange({
        field: 'temperatureRiseK',
        given: ΔT,
        unit: 'K',
        allowed: `a rise at which the remanence stays above zero (here ${α < 0 ? 'less' : 'more'} than ${shown(-100 / α)} K)`,
      });
    }
    log?.(
      formulaStep({
        symbol: 'k_T',
        formula: '(1 + α · ΔT / 100)²',
        where: { α, ΔT },
        value: torqueFactor,
        unit: '1',
        note: 'torque ~ Br² from memory, unverified; reversible loss only',
      }),
    );
    return succeed({ torqueFactor });
  },
});
