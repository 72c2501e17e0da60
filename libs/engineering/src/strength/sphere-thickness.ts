import { z } from 'zod';
import { calculation } from '../calculation.js';
import { sphereRange, sphereRules, sphereSources } from './sphere-rules.js';
import { requiredThicknessField } from './pressure-fields.js';
import { wallThickness, wallThicknessInputs } from './wall-calculation.js';

/**
 * Required thickness of a spherical shell or hemispherical end under internal pressure.
 *
 *   EN 13445-3:  e = P D_i / (4 f z − P) = P D_e / (4 f z + P), above e/D_e = 0.16 Lamé and limit load
 *   ASME VIII-1: t = P R / (2 S E − 0.2 P), above 0.665 S E: R (exp(P / (2 S E)) − 1)
 *   AD 2000:     s = D_a p / (4 (K/S) v + p), to D_a/D_i = 1.2
 *
 * @param innerRadiusM or outerDiameterM, one of the two [m]
 * @returns thicknessM without allowances [m]
 * @error CALC_OUT_OF_RANGE where the code's last formula ends
 * @source en-13445-3:2021 §7.4.3; asme-viii-1 UG-27(d), appendix 1-3; ad-2000-b1 eq. 3
 */
export const sphereThickness = calculation({
  id: 'strength.sphereThickness',
  title: 'Thickness of a sphere or hemispherical end',
  inputs: wallThicknessInputs,
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`e = \frac{P D_i}{4 f z - P} = \frac{P D_e}{4 f z + P}`,
  range: sphereRange,
  source: sphereSources,
  compute: (inputs, log) => wallThickness(sphereRules, inputs, log),
});
