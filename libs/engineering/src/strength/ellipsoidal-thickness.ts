import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { shown } from '../shown.js';
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
  pressureField,
  requiredThicknessField,
} from './pressure-fields.js';

/**
 * Required thickness of a 2:1 semi-ellipsoidal end under internal pressure, and never less than the code's formula
 * allows (0.0018 D, 0.001 D_e).
 *
 *   ASME VIII-1: t = P D / (2 S E − 0.2 P)
 *   EN 13445-3:  as a torispherical end with R = 0.9 D_i, r = 0.17 D_i
 *
 * @returns thicknessM without allowances [m]
 * @error CALC_OUT_OF_RANGE outside the code's thicknesses, CALC_INVALID_INPUT for AD 2000
 * @source asme-viii-1 UG-32(d); en-13445-3:2021 §7.5.4 (from memory, unverified)
 */
export const ellipsoidalThickness = calculation({
  id: 'strength.ellipsoidalThickness',
  title: 'Thickness of a 2:1 ellipsoidal end',
  inputs: z.strictObject({
    code: z.enum(ellipsoidalCodes).meta({ description: 'Pressure vessel code' }),
    pressurePaGauge: pressureField,
    innerDiameterM: length('D', 'Inner diameter of the skirt'),
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`t = \frac{P D}{2 S E - 0.2 P}`,
  range: ellipsoidalRange,
  source: ellipsoidalSources,
  compute: ({ code, pressurePaGauge, innerDiameterM, allowableStressPa, jointEfficiency }, log) => {
    const end = { innerDiameter: innerDiameterM, allowableStress: allowableStressPa, jointEfficiency };
    const thickness = ellipsoidalRules[code].thickness(end, pressurePaGauge);
    if (!thickness.ok) return thickness;
    if (log !== undefined) {
      log({
        symbol: 'e',
        formula: 'smallest e with P(e) ≥ P',
        substituted: `smallest e with P(e) ≥ ${shown(pressurePaGauge)} Pa`,
        value: thickness.value,
        unit: 'm',
        note: 'checked by the permissible pressure at this thickness:',
      });
      ellipsoidalRules[code].pressure(end, thickness.value, log);
    }
    return succeed({ thicknessM: thickness.value });
  },
});
