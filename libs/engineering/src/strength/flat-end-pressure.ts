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
  permissiblePressureField,
  thicknessField,
} from './pressure-fields.js';

/**
 * Permissible pressure of an unstayed circular flat end without openings.
 *
 *   ASME VIII-1:          P = S E (t / d)² / C
 *   EN 13445-3, AD 2000:  P = f z (e / (C d))²
 *
 * @returns pressurePaGauge [Pa]
 * @error CALC_OUT_OF_RANGE where the end is thicker than its diameter
 * @source asme-viii-1 UG-34(c)(2); en-13445-3:2021 §10.4; ad-2000-b5
 */
export const flatEndPressure = calculation({
  id: 'strength.flatEndPressure',
  title: 'Permissible pressure of a flat end',
  inputs: z.strictObject({
    code: codeField,
    thicknessM: thicknessField,
    diameterM: flatEndDiameterField,
    attachmentFactor: attachmentFactorField,
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \frac{S E}{C}\left(\frac{t}{d}\right)^2`,
  range: flatEndRange,
  source: flatEndSources,
  compute: (inputs, log) => {
    const {
      code,
      thicknessM: e,
      diameterM: d,
      attachmentFactor,
      allowableStressPa: f,
      jointEfficiency,
    } = inputs;
    if (e > d) {
      return outOfRange({
        field: 'thicknessM',
        given: e,
        unit: 'm',
        allowed: `at most the diameter (${shown(d)} m)`,
      });
    }
    const pressurePaGauge = (f * jointEfficiency * (e / d) ** 2) / flatEndLoadFactor(code, attachmentFactor);
    log?.(
      formulaStep({
        symbol: 'P',
        formula: flatEndFormula[code].pressure,
        where: { f, z: jointEfficiency, e, d, C: attachmentFactor },
        value: pressurePaGauge,
        unit: 'Pa',
        note: flatEndFormula[code].clause,
      }),
    );
    return succeed({ pressurePaGauge });
  },
});
