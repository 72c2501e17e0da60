import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { missingInput } from '../missing-input.js';
import { cylinderRules, smallTubeDiameterM } from './cylinder-rules.js';
import { cylinderRange, cylinderSources } from './cylinder-sources.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  length,
  pressureField,
  requiredThicknessField,
} from './pressure-fields.js';

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
  inputs: z.strictObject({
    code: codeField,
    pressurePaGauge: pressureField,
    innerRadiusM: length('R', 'Inner radius, corroded; or give the outer diameter').optional(),
    outerDiameterM: length('D_e', 'Outer diameter; or give the inner radius').optional(),
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`e = \frac{P D_i}{2 f z - P} = \frac{P D_e}{2 f z + P}`,
  range: cylinderRange,
  source: cylinderSources,
  compute: (inputs, log) => {
    const {
      code,
      pressurePaGauge: P,
      innerRadiusM,
      outerDiameterM,
      allowableStressPa: f,
      jointEfficiency,
    } = inputs;
    if ((innerRadiusM === undefined) === (outerDiameterM === undefined)) {
      return missingInput('innerRadiusM', 'give either innerRadiusM or outerDiameterM, not both');
    }
    const innerDiameter = innerRadiusM === undefined ? undefined : 2 * innerRadiusM;
    const needed = cylinderRules[code].diameterRatio(
      P / (f * jointEfficiency),
      (k) => (outerDiameterM ?? (innerDiameter ?? 0) * k) <= smallTubeDiameterM,
    );
    if (!needed.ok) return needed;
    const { value: k, branch } = needed.value;
    const thicknessM =
      innerDiameter === undefined ? ((outerDiameterM ?? 0) * (1 - 1 / k)) / 2 : (innerDiameter * (k - 1)) / 2;
    log?.(
      formulaStep({
        symbol: 'e',
        formula: innerDiameter === undefined ? branch.thicknessFromOuter : branch.thicknessFromInner,
        where: { P, f, z: jointEfficiency, D_i: innerDiameter ?? 0, D_e: outerDiameterM ?? 0 },
        value: thicknessM,
        unit: 'm',
        note: branch.note === undefined ? branch.clause : `${branch.clause}: ${branch.note}`,
      }),
    );
    return succeed({ thicknessM });
  },
});
