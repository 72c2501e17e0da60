import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import {
  ellipsoidalCodes,
  ellipsoidalRange,
  ellipsoidalRules,
  ellipsoidalSources,
} from './ellipsoidal-rules.js';
import {
  allowableStressField,
  jointEfficiencyField,
  length,
  permissiblePressureField,
  thicknessField,
} from './pressure-fields.js';

/**
 * Permissible internal pressure of a 2:1 semi-ellipsoidal end.
 *
 *   ASME VIII-1: P = 2 S E t / (D + 0.2 t)
 *   EN 13445-3:  as a torispherical end with R = 0.9 D_i, r = 0.17 D_i
 *
 * @returns pressurePaGauge [Pa]
 * @error CALC_OUT_OF_RANGE outside the code's thicknesses, CALC_INVALID_INPUT for AD 2000
 * @source asme-viii-1 UG-32(d); en-13445-3:2021 §7.5.4 (from memory, unverified)
 */
export const ellipsoidalPressure = calculation({
  id: 'strength.ellipsoidalPressure',
  title: 'Permissible pressure of a 2:1 ellipsoidal end',
  inputs: z.strictObject({
    code: z.enum(ellipsoidalCodes).meta({ description: 'Pressure vessel code' }),
    thicknessM: thicknessField,
    innerDiameterM: length('D', 'Inner diameter of the skirt'),
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \frac{2 S E\,t}{D + 0.2\,t}`,
  range: ellipsoidalRange,
  source: ellipsoidalSources,
  compute: ({ code, thicknessM, innerDiameterM, allowableStressPa, jointEfficiency }, log) => {
    const end = { innerDiameter: innerDiameterM, allowableStress: allowableStressPa, jointEfficiency };
    const pressure = ellipsoidalRules[code].pressure(end, thicknessM, log);
    return pressure.ok ? succeed({ pressurePaGauge: pressure.value }) : pressure;
  },
});
