import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { coneAngle, conicalFields, thickestCone } from './conical-fields.js';
import { conicalEndPressure, conicalRange, conicalSources } from './conical-end.js';
import { permissiblePressureField, thicknessField } from './pressure-fields.js';
import { isAtMost } from './wall-rule.js';

/**
 * Permissible internal pressure of a conical end without knuckle, the lower of the cone and its junction.
 *
 *   EN 13445-3:  P = 2 f z e cos α / (D_i + e cos α);  ASME VIII-1: P = 2 S E t cos α / (D + 1.2 t cos α)
 *   junction:    P = 2 f e_j / (D_c β), see `conicalEndPressure`
 *
 * @returns pressurePaGauge [Pa]
 * @range half angle to 60° (EN 13445-3) or 30° (ASME VIII-1); e ≤ 0.16 D_e
 * @error CALC_OUT_OF_RANGE outside the range
 * @source asme-viii-1 UG-32(f); en-13445-3:2021 §7.6.4, §7.6.6 (from memory, unverified)
 */
export const conicalPressure = calculation({
  id: 'strength.conicalPressure',
  title: 'Permissible pressure of a conical end',
  inputs: z.strictObject({ ...conicalFields, thicknessM: thicknessField }),
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \min\left(\frac{2 f z\,e\cos\alpha}{D_i + e\cos\alpha},\ \frac{2 f e_j}{D_c\,\beta}\right)`,
  range: conicalRange,
  source: conicalSources,
  compute: (given, log) => {
    const { code, innerDiameterM, thicknessM, cylinderThicknessM = thicknessM } = given;
    const angle = coneAngle(code, given.coneHalfAngleDeg);
    if (!angle.ok) return angle;
    const thickest = thickestCone(innerDiameterM);
    if (!isAtMost(thicknessM, thickest)) {
      return outOfRange({
        field: 'thicknessM',
        given: thicknessM,
        unit: 'm',
        allowed: `up to ${shown(thickest)} m (0.16 of the outer diameter)`,
      });
    }
    const pressurePaGauge = conicalEndPressure(
      {
        code,
        thickness: thicknessM,
        innerDiameter: innerDiameterM,
        cylinderThickness: cylinderThicknessM,
        halfAngleRad: angle.value,
        allowableStress: given.allowableStressPa,
        jointEfficiency: given.jointEfficiency,
      },
      log,
    );
    return succeed({ pressurePaGauge });
  },
});
