import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { smallestEnough } from '../smallest-enough.js';
import { coneAngle, conicalFields, thickestCone } from './conical-fields.js';
import { conicalEndPressure, conicalRange, conicalSources } from './conical-end.js';
import { pressureField, requiredThicknessField } from './pressure-fields.js';

/**
 * Required thickness of a conical end without knuckle: the least that cone and junction carry.
 *
 *   EN 13445-3: e = P D_i / ((2 f z − P) cos α);  ASME VIII-1: t = P D / (2 cos α (S E − 0.6 P));  junction by search
 *
 * @returns thicknessM without allowances [m]
 * @range half angle to 60° (EN 13445-3) or 30° (ASME VIII-1); e ≤ 0.16 D_e
 * @error CALC_OUT_OF_RANGE outside the range, and where the cylinder is too thin for the junction
 * @source asme-viii-1 UG-32(f); en-13445-3:2021 §7.6.4, §7.6.6 (from memory, unverified)
 */
export const conicalThickness = calculation({
  id: 'strength.conicalThickness',
  title: 'Thickness of a conical end',
  inputs: z.strictObject({ ...conicalFields, pressurePaGauge: pressureField }),
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`e = \min\{e : P(e) \ge P\}`,
  range: conicalRange,
  source: conicalSources,
  compute: (given, log) => {
    const { code, pressurePaGauge, innerDiameterM, cylinderThicknessM } = given;
    const angle = coneAngle(code, given.coneHalfAngleDeg);
    if (!angle.ok) return angle;
    const coneOf = (thickness: number) => ({
      code,
      thickness,
      innerDiameter: innerDiameterM,
      cylinderThickness: cylinderThicknessM ?? thickness,
      halfAngleRad: angle.value,
      allowableStress: given.allowableStressPa,
      jointEfficiency: given.jointEfficiency,
    });
    const thickest = thickestCone(innerDiameterM);
    const most = conicalEndPressure(coneOf(thickest));
    if (most < pressurePaGauge) {
      return outOfRange({
        field: 'pressurePaGauge',
        given: pressurePaGauge,
        unit: 'Pa',
        allowed: `up to ${shown(most)} Pa by cone and junction; take a flatter cone, a thicker cylinder or another end`,
      });
    }
    if (pressurePaGauge === 0) {
      log?.({ symbol: 'e', formula: 'no pressure', substituted: 'P = 0 Pa', value: 0, unit: 'm' });
      return succeed({ thicknessM: 0 });
    }
    const thicknessM = smallestEnough({
      low: 0,
      high: thickest,
      tolerance: 1e-12 * innerDiameterM,
      isEnough: (thickness) => conicalEndPressure(coneOf(thickness)) >= pressurePaGauge,
    });
    if (log) {
      log({
        symbol: 'e',
        formula: 'smallest e with P(e) ≥ P',
        substituted: `smallest e with P(e) ≥ ${shown(pressurePaGauge)} Pa`,
        value: thicknessM,
        unit: 'm',
        note: 'checked by the permissible pressure at this thickness:',
      });
      conicalEndPressure(coneOf(thicknessM), log);
    }
    return succeed({ thicknessM });
  },
});
