import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { fromMemory, published } from '../source-reference.js';
import { shown } from '../shown.js';
import { sphereUnderExternalPressure } from './external-pressure-dished.js';
import { elasticLimitField, elasticModulusField, safetyFactorField } from './external-pressure-fields.js';
import { explainSphere } from './external-pressure-steps.js';
import { length, thicknessField } from './pressure-fields.js';

const pressure = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description });

/**
 * Allowable external pressure of a semi-ellipsoidal end, as a sphere of its crown radius.
 *
 *   R = D_e² / (4 h)   P_y = 2 σ_e e / R   P_m = 1.21 E e² / R²   P = P_r / S
 *
 * @param outsideHeightM h, of the outer surface above the tangent line [m]
 * @returns pressures over internal [Pa], equivalentRadiusM R [m]
 * @range 0.15 D_e ≤ h ≤ 0.5 D_e, e ≤ 0.16 R, circularity within 1 % of R
 * @error CALC_OUT_OF_RANGE outside the range
 * @source en-13445-3:2021 §8.8.3, §8.7, table 8.5-5
 */
export const externalPressureEllipsoidalEnd = calculation({
  id: 'strength.externalPressureEllipsoidalEnd',
  title: 'Allowable external pressure of an ellipsoidal end',
  inputs: z.strictObject({
    code: z.literal('EN 13445-3').meta({ description: 'Pressure vessel code' }),
    outerDiameterM: length('D_e', 'Outer diameter'),
    outsideHeightM: length('h', 'Outside height of the dish'),
    thicknessM: thicknessField,
    elasticModulusPa: elasticModulusField,
    elasticLimitPa: elasticLimitField,
    safetyFactor: safetyFactorField,
  }),
  outputs: z.strictObject({
    equivalentRadiusM: quantity({ unit: 'm', symbol: 'R', description: 'Radius of the equivalent sphere' }),
    yieldPressurePa: pressure('P_y', 'Pressure at which the membrane yields'),
    elasticInstabilityPressurePa: pressure('P_m', 'Theoretical elastic instability pressure'),
    lowerBoundCollapsePressurePa: pressure('P_r', 'Lower bound collapse pressure'),
    allowablePressurePa: pressure('P', 'Allowable external pressure over internal'),
  }),
  formula: String.raw`R = \frac{D_e^2}{4h},\quad P_y = \frac{2\sigma_e e}{R},\quad P_m = \frac{1.21\,E e^2}{R^2},\quad P = \frac{P_r}{S}`,
  range: '0.15 De ≤ h ≤ 0.5 De, e ≤ 0.16 R, circularity within 1 % of R',
  source: [published('en-13445-3:2021 §8.8.3'), fromMemory('en-13445-3:2021 table 8.5-5')],
  compute: (inputs, log) => {
    const { outerDiameterM: D_e, outsideHeightM: h, thicknessM: e, elasticModulusPa: E } = inputs;
    if (h < 0.15 * D_e || h > 0.5 * D_e * (1 + 1e-9)) {
      return outOfRange({
        field: 'outsideHeightM',
        given: h,
        unit: 'm',
        allowed: `${shown(0.15 * D_e)} to ${shown(0.5 * D_e)} m (0.15 to 0.5 of the outer diameter)`,
      });
    }
    const R = D_e ** 2 / (4 * h);
    if (e > 0.16 * R) {
      return outOfRange({
        field: 'thicknessM',
        given: e,
        unit: 'm',
        allowed: `at most ${shown(0.16 * R)} m (0.16 R)`,
      });
    }
    const sphere = {
      radius: R,
      thickness: e,
      elasticModulus: E,
      elasticLimit: inputs.elasticLimitPa,
      safetyFactor: inputs.safetyFactor,
    };
    const limits = sphereUnderExternalPressure(sphere);
    if (log !== undefined) {
      log(formulaStep({ symbol: 'R', formula: 'D_e² / (4 · h)', where: { D_e, h }, value: R, unit: 'm' }));
      explainSphere(sphere, 'P', log);
    }
    return succeed({
      equivalentRadiusM: R,
      yieldPressurePa: limits.yieldPressure,
      elasticInstabilityPressurePa: limits.elasticInstability,
      lowerBoundCollapsePressurePa: limits.lowerBoundCollapse,
      allowablePressurePa: limits.allowable,
    });
  },
});
