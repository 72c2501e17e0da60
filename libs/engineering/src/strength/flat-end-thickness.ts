import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { attachmentFactorField, flatEndDiameterField } from './flat-end-fields.js';
import { flatEndFormula, flatEndLoadFactor, flatEndRange, flatEndSources } from './flat-end-rule.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  pressureField,
  requiredThicknessField,
} from './pressure-fields.js';

/**
 * Required thickness of an unstayed circular flat end without openings.
 *
 *   ASME VIII-1:          t = d √(C P / (S E))
 *   EN 13445-3, AD 2000:  e = C d √(P / (f z))
 *
 * @returns thicknessM without allowances [m]
 * @error CALC_OUT_OF_RANGE where the end would be thicker than its diameter
 * @source asme-viii-1 UG-34(c)(2); en-13445-3:2021 §10.4; ad-2000-b5
 */
export const flatEndThickness = calculation({
  id: 'strength.flatEndThickness',
  title: 'Thickness of a flat end',
  inputs: z.strictObject({
    code: codeField,
    pressurePaGauge: pressureField,
    diameterM: flatEndDiameterField,
    attachmentFactor: attachmentFactorField,
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`t = d\,\sqrt{\frac{C P}{S E}}`,
  range: flatEndRange,
  source: flatEndSources,
  compute: (inputs, log) => {
    const {
      code,
      pressurePaGauge: P,
      diameterM: d,
      attachmentFactor,
      allowableStressPa: f,
      jointEfficiency,
    } = inputs;
    const thicknessM = d * Math.sqrt((flatEndLoadFactor(code, attachmentFactor) * P) / (f * jointEfficiency));
    if (thicknessM > d) {
      return outOfRange({
        field: 'pressurePaGauge',
        given: P,
        unit: 'Pa',
        allowed: `at most ${shown((f * jointEfficiency) / flatEndLoadFactor(code, attachmentFactor))} Pa, where the end is as thick as its diameter`,
      });
    }
    log?.(
      formulaStep({
        symbol: 'e',
        formula: flatEndFormula[code].thickness,
        where: { f, z: jointEfficiency, P, d, C: attachmentFactor },
        value: thicknessM,
        unit: 'm',
        note: flatEndFormula[code].clause,
      }),
    );
    return succeed({ thicknessM });
  },
});
