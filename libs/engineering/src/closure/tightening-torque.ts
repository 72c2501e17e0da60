import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { commonPractice } from '../source-reference.js';
import { closureLength, force } from './closure-fields.js';

/**
 * Tightening torque of a bolt from its preload.
 *
 *   F = c S_p A_s    T = K F d
 *
 * @param preloadFraction c, share of the proof stress [-]
 * @param nutFactor       K: dry steel 0.2, lubricated 0.15 to 0.16, anti-seize 0.12 to 0.13 [-]
 * @returns preloadN F [N], torqueNm T [N·m]
 * @range 0 < c ≤ 1, 0.05 ≤ K ≤ 0.5
 * @error CALC_OUT_OF_RANGE outside the range
 * @source common practice: nut factor method; K scatters by a quarter
 */
export const tighteningTorque = calculation({
  id: 'closure.tighteningTorque',
  title: 'Tightening torque of a bolt',
  inputs: z.strictObject({
    diameterM: closureLength('d', 'Nominal diameter'),
    stressAreaM2: quantity({ unit: 'm2', symbol: 'A_s', description: 'Stress area' }, z.number().positive()),
    proofStressPa: quantity(
      { unit: 'Pa', symbol: 'S_p', description: 'Proof stress; class 8.8: 580 MPa to M16, 600 MPa above' },
      z.number().positive(),
    ),
    preloadFraction: quantity(
      { unit: '1', symbol: 'c', description: 'Preload as a share of the proof stress' },
      z.number().positive().max(1),
    ),
    nutFactor: quantity(
      {
        unit: '1',
        symbol: 'K',
        description: 'Nut factor: dry 0.2, lubricated 0.15 to 0.16, anti-seize 0.12 to 0.13',
      },
      z.number().min(0.05).max(0.5),
    ),
  }),
  outputs: z.strictObject({
    preloadN: force('F', 'Preload of the bolt'),
    torqueNm: quantity({ unit: 'N.m', symbol: 'T', description: 'Tightening torque' }),
  }),
  formula: String.raw`F = c\,S_p A_s,\quad T = K F d`,
  range: '0 < c ≤ 1, 0.05 ≤ K ≤ 0.5',
  source: [commonPractice('nut-factor-method')],
  compute: ({ diameterM: d, stressAreaM2, proofStressPa, preloadFraction, nutFactor: K }, log) => {
    const preloadN = preloadFraction * proofStressPa * stressAreaM2;
    const torqueNm = K * preloadN * d;
    log?.(
      formulaStep({
        symbol: 'F',
        formula: 'c · S_p · A_s',
        where: { c: preloadFraction, S_p: proofStressPa, A_s: stressAreaM2 },
        value: preloadN,
        unit: 'N',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'T',
        formula: 'K · F · d',
        where: { K, F: preloadN, d },
        value: torqueNm,
        unit: 'N.m',
      }),
    );
    return succeed({ preloadN, torqueNm });
  },
});
