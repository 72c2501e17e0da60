import { z } from 'zod';
import { calculation } from '../calculation.js';
import { cylinderRules } from './cylinder-rules.js';
import { cylinderRange, cylinderSources } from './cylinder-sources.js';
import { requiredThicknessField } from './pressure-fields.js';
import { wallThickness, wallThicknessInputs } from './wall-calculation.js';

/**
 * Required thickness of a cylinder under internal pressure.
 *
 *   EN 13445-3:  e = P D_i / (2 f z − P) = P D_e / (2 f z + P), above e/D_e = 0.16 Lamé
 *   ASME VIII-1: t = P R / (S E − 0.6 P), above 0.385 S E: R (exp(P / S E) − 1)
 *   AD 2000:     s = D_a p / (2 (K/S) v + p), above D_a/D_i = 1.2: D_a p / (2.3 (K/S) v − p)
 *
 * @param innerRadiusM or outerDiameterM, one of the two [m]
 * @returns thicknessM without allowances [m]
 * @error CALC_OUT_OF_RANGE where the code's last formula ends
 * @source en-13445-3:2021 §7.4.2; asme-viii-1 UG-27(c)(1), appendix 1-1, 1-2; ad-2000-b1 eq. 2
 */
export const cylinderThickness = calculation({
  id: 'strength.cylinderThickness',
  title: 'Thickness of a cylinder under internal pressure',
  inputs: wallThicknessInputs,
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`e = \frac{P D_i}{2 f z - P} = \frac{P D_e}{2 f z + P}`,
  range: cylinderRange,
  source: cylinderSources,
  compute: (inputs, log) => wallThickness(cylinderRules, inputs, log),
});
