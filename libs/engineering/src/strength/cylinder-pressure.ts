import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { cylinderRules, smallTubeDiameterM } from './cylinder-rules.js';
import { cylinderRange, cylinderSources } from './cylinder-sources.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  length,
  permissiblePressureField,
  thicknessField,
} from './pressure-fields.js';

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
  inputs: z.strictObject({
    code: codeField,
    thicknessM: thicknessField,
    innerRadiusM: length('R', 'Inner radius, corroded; or give the outer diameter').optional(),
    outerDiameterM: length('D_e', 'Outer diameter; or give the inner radius').optional(),
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \frac{2 f z\,e}{D_i + e}`,
  range: cylinderRange,
  source: cylinderSources,
  compute: (inputs, log) => {
    const {
      code,
      thicknessM: e,
      innerRadiusM,
      outerDiameterM,
      allowableStressPa: f,
      jointEfficiency,
    } = inputs;
    if ((innerRadiusM === undefined) === (outerDiameterM === undefined)) {
      return missingInput('innerRadiusM', 'give either innerRadiusM or outerDiameterM, not both');
    }
    const innerDiameter = innerRadiusM === undefined ? (outerDiameterM ?? 0) - 2 * e : 2 * innerRadiusM;
    if (innerDiameter <= 0) {
      return outOfRange({
        field: 'thicknessM',
        given: e,
        unit: 'm',
        allowed: `less than half of outerDiameterM (${shown((outerDiameterM ?? 0) / 2)} m)`,
      });
    }
    const outerDiameter = innerDiameter + 2 * e;
    const carried = cylinderRules[code].loadRatio(
      outerDiameter / innerDiameter,
      outerDiameter <= smallTubeDiameterM,
    );
    if (!carried.ok) return carried;
    const { value: loadRatio, branch } = carried.value;
    const pressurePaGauge = loadRatio * f * jointEfficiency;
    log?.(
      formulaStep({
        symbol: 'P',
        formula: branch.pressure,
        where: { f, z: jointEfficiency, e, D_i: innerDiameter },
        value: pressurePaGauge,
        unit: 'Pa',
        note: branch.note === undefined ? branch.clause : `${branch.clause}: ${branch.note}`,
      }),
    );
    return succeed({ pressurePaGauge });
  },
});
