import { z } from 'zod';
import { calculation } from '../calculation.js';
import { cylinderRules } from './cylinder-rules.js';
import { cylinderRange, cylinderSources } from './cylinder-sources.js';
import { permissiblePressureField } from './pressure-fields.js';
import { wallPressure, wallPressureInputs } from './wall-calculation.js';

/**
 * Permissible internal pressure of a cylinder.
 *
 *   EN 13445-3:  P = 2 f z e / (D_i + e), above e/D_e = 0.16 Lamé: f z (D_e² − D_i²) / (D_e² + D_i²)
 *   ASME VIII-1: P = S E t / (R + 0.6 t), above t = R/2: S E ln((R + t) / R)
 *   AD 2000:     as EN 13445-3 to D_a/D_i = 1.2, above: 2.3 (K/S) v s / (D_a + s)
 *
 * @param innerRadiusM or outerDiameterM, one of the two [m]
 * @returns pressurePaGauge [Pa]
 * @error CALC_OUT_OF_RANGE where the wall leaves no bore, or the code's last formula ends
 * @source en-13445-3:2021 §7.4.2; asme-viii-1 UG-27(c)(1), appendix 1-1, 1-2; ad-2000-b1 eq. 2
 */
export const cylinderPressure = calculation({
  id: 'strength.cylinderPressure',
  title: 'Permissible pressure of a cylinder',
  inputs: wallPressureInputs,
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \frac{2 f z\,e}{D_i + e}`,
  range: cylinderRange,
  source: cylinderSources,
  compute: (inputs, log) => wallPressure(cylinderRules, inputs, log),
});
