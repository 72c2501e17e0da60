import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import {
  asymmetryField,
  couplingField,
  horizontalField,
  travelField,
  verticalField,
} from './lifting-fields.js';
import { liftingMultipliers, productOf } from './lifting-multipliers.js';

/** Load constant of the lifting equation [kg]. */
export const loadConstantKg = 23;

/**
 * Recommended weight limit of a lift by one person, and the lifting index of a load.
 *
 *   RWL = 23 kg · HM · VM · DM · AM · FM · CM, LI = L/RWL
 *   HM = 0.25/H, VM = 1 − 0.3 |V − 0.75|, DM = 0.82 + 0.045/D, AM = 1 − 0.0032 A
 *
 * @param loadKg          L, the load that is lifted [kg]
 * @param horizontalM     H [m], to 0.254 m taken as the least distance
 * @param verticalM       V [m]
 * @param travelM         D [m]
 * @param asymmetryDeg    A [°]
 * @param frequencyPerMin F, lifts a minute
 * @param durationH       time at the task [h]
 * @param coupling        good, fair or poor
 * @returns recommendedWeightKg RWL [kg], and liftingIndex where RWL is above zero
 * @range H to 0.63 m, V and D to 1.75 m, A to 135°, 15 lifts a minute, 8 h; past a limit RWL is 0
 * @error CALC_OUT_OF_RANGE outside the schema
 * @source niosh-94-110 (rev. 2021)
 */
export const recommendedWeight = calculation({
  id: 'lifting.recommendedWeight',
  title: 'Recommended weight limit of a lift',
  inputs: z.strictObject({
    loadKg: quantity({ unit: 'kg', symbol: 'L', description: 'Load' }, z.number().positive()).optional(),
    horizontalM: horizontalField,
    verticalM: verticalField,
    travelM: travelField,
    asymmetryDeg: asymmetryField,
    frequencyPerMin: quantity(
      { unit: '/min', symbol: 'F', description: 'Lifts a minute' },
      z.number().min(0).max(60),
    ),
    durationH: quantity(
      { unit: 'h', symbol: 't', description: 'Time at the task' },
      z.number().positive().max(8),
    ),
    coupling: couplingField,
  }),
  outputs: z.strictObject({
    recommendedWeightKg: quantity({ unit: 'kg', symbol: 'RWL', description: 'Recommended weight limit' }),
    liftingIndex: quantity({ unit: '1', symbol: 'LI', description: 'Load over limit' }).optional(),
  }),
  formula: String.raw`RWL = 23\,\text{kg} \cdot HM \cdot VM \cdot DM \cdot AM \cdot FM \cdot CM`,
  range: 'one person, two hands, smooth lift, temperate air; past a limit of the multipliers RWL is 0',
  source: [
    published('niosh-94-110 (rev. 2021)'),
    fromMemory('niosh-94-110 table 5, columns of 2 and 8 h in part'),
  ],
  compute: ({ loadKg, ...task }, log) => {
    const multipliers = liftingMultipliers(task);
    const recommendedWeightKg = loadConstantKg * productOf(multipliers);
    const factors = Object.values<number>({ ...multipliers }).map(shown);
    log?.({
      symbol: 'RWL',
      formula: '23 HM VM DM AM FM CM',
      substituted: `23 × ${factors.join(' × ')}`,
      value: recommendedWeightKg,
      unit: 'kg',
    });
    return succeed({
      recommendedWeightKg,
      ...(loadKg === undefined || recommendedWeightKg === 0
        ? {}
        : { liftingIndex: loadKg / recommendedWeightKg }),
    });
  },
});
