import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  permissiblePressureField,
  thicknessField,
} from './pressure-fields.js';
import {
  torisphericalRange,
  torisphericalRules,
  torisphericalShape,
  torisphericalShapeFields,
  torisphericalSources,
} from './torispherical-rules.js';

/**
 * Permissible internal pressure of a torispherical end.
 *
 *   ASME VIII-1: P = 2 S E t / (L M + 0.2 t), M = ¼ (3 + √(L/r)), inside crown radius
 *   EN 13445-3:  least of crown membrane, knuckle yielding, knuckle buckling
 *   AD 2000 B3:  P = 4 (K/S) v s / (D_a β)
 *
 * @returns pressurePaGauge [Pa]
 * @error CALC_OUT_OF_RANGE outside the code's shapes and thicknesses, CALC_INVALID_INPUT without a needed diameter
 * @source asme-viii-1 appendix 1-4(d); en-13445-3:2021 §7.5.3; ad-2000-b3
 */
export const torisphericalPressure = calculation({
  id: 'strength.torisphericalPressure',
  title: 'Permissible pressure of a torispherical end',
  inputs: z.strictObject({
    code: codeField,
    thicknessM: thicknessField,
    ...torisphericalShapeFields,
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField,
  }),
  outputs: z.strictObject({ pressurePaGauge: permissiblePressureField }),
  formula: String.raw`P = \frac{2 S E\,t}{L M + 0.2\,t},\quad M = \tfrac14\left(3+\sqrt{L/r}\right)`,
  range: torisphericalRange,
  source: torisphericalSources,
  compute: (inputs, log) => {
    const pressure = torisphericalRules[inputs.code].pressure(
      { ...torisphericalShape(inputs), thickness: inputs.thicknessM },
      log,
    );
    return pressure.ok ? succeed({ pressurePaGauge: pressure.value }) : pressure;
  },
});
