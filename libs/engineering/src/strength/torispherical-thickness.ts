import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { shown } from '../shown.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  pressureField,
  requiredThicknessField,
} from './pressure-fields.js';
import {
  torisphericalRange,
  torisphericalRules,
  torisphericalShape,
  torisphericalShapeFields,
  torisphericalSources,
} from './torispherical-rules.js';

/**
 * Required thickness of a torispherical end under internal pressure: the smallest thickness whose permissible
 * pressure reaches P, and never less than the code's formula allows (0.002 L, 0.001 D_e).
 *
 *   ASME VIII-1: t = P L M / (2 S E − 0.2 P), M = ¼ (3 + √(L/r)), inside crown radius
 *   EN 13445-3:  the greatest of crown membrane, knuckle yielding, knuckle buckling
 *   AD 2000 B3:  s = D_a p β / (4 (K/S) v)
 *
 * @returns thicknessM without allowances [m]
 * @error CALC_OUT_OF_RANGE outside the code's shapes and thicknesses, CALC_INVALID_INPUT without a needed diameter
 * @source asme-viii-1 appendix 1-4(d); en-13445-3:2021 §7.5.3; ad-2000-b3
 */
export const torisphericalThickness = calculation({
  id: 'strength.torisphericalThickness',
  title: 'Thickness of a torispherical end',
  inputs: z.strictObject({
    code: codeField,
    pressurePaGauge: pressureField,
    ...torisphericalShapeFields,
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ thicknessM: requiredThicknessField }),
  formula: String.raw`t = \frac{P L M}{2 S E - 0.2 P},\quad M = \tfrac14\left(3+\sqrt{L/r}\right)`,
  range: torisphericalRange,
  source: torisphericalSources,
  compute: (inputs, log) => {
    const rule = torisphericalRules[inputs.code];
    const shape = torisphericalShape(inputs);
    const thickness = rule.thickness(shape, inputs.pressurePaGauge);
    if (!thickness.ok) return thickness;
    if (log !== undefined) {
      log({
        symbol: 'e',
        formula: 'smallest e with P(e) ≥ P',
        substituted: `smallest e with P(e) ≥ ${shown(inputs.pressurePaGauge)} Pa`,
        value: thickness.value,
        unit: 'm',
        note: 'checked by the permissible pressure at this thickness:',
      });
      rule.pressure({ ...shape, thickness: thickness.value }, log);
    }
    return succeed({ thicknessM: thickness.value });
  },
});
