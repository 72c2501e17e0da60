import { z } from 'zod';
import { calculation } from '../calculation.js';
import { sphereRange, sphereRules, sphereSources } from './sphere-rules.js';
import { permissiblePressureField } from './pressure-fields.js';
import { wallPressure, wallPressureInputs } from './wall-calculation.js';

/**
 * Permissible internal pressure of a spherical shell or hemispherical end.
 *
 *   EN 13445-3:  P = 4 f z e / (D_i + e), above e/D_e = 0.16 the lower of Lamé and 2 f z ln(D_e / D_i)
 *   ASME VIII-1: P = 2 S E t / (R + 0.2 t), above t = 0.356 R: 2 S E ln((R + t) / R)
 *   AD 2000:     as EN 13445-3, to D_a/D_i = 1.2
 *
 * @param innerRadiusM or outerDiameterM, one of the two [m]
 * @returns pressurePaGauge [Pa]
 * @error CALC_OUT_OF_RANGE where the wall leaves no bore, or the code's last formula ends
 * @source en-13445-3:2021 §7.4.3; asme-viii-1 UG-27(d), appendix 1-3; ad-2000-b1 eq. 3
 */
export const spherePressure = calculation({
  id: 'strength.spherePressure',
  title: 'Permissible pressure of a sphere or hemispherical end',
  inputs: wallPressureInputs,
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \frac{4 f z\,e}{D_i + e}`,
  range: sphereRange,
  source: sphereSources,
  compute: (inputs, log) => wallPressure(sphereRules, inputs, log),
});
