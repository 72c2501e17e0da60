import { z } from 'zod';
import { fail, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';

/**
 * Hoop stress at the bore of a thick-walled cylinder under internal pressure (Lamé).
 *
 *   σ_θ = p (r_o² + r_i²) / (r_o² − r_i²)
 *
 * @param pressurePaGauge p, internal over external [Pa]
 * @param innerRadiusM    r_i [m]
 * @param outerRadiusM    r_o [m]
 * @returns hoopStressAtBorePa σ_θ [Pa]
 * @range 0 < r_i < r_o, p ≥ 0
 * @error CALC_OUT_OF_RANGE outside the range
 * @source timoshenko-strength-2 §11 (Lamé)
 */
export const thickWallStress = calculation({
  id: 'strength.thickWallStress',
  title: 'Hoop stress at the bore of a thick cylinder',
  inputs: z.strictObject({
    pressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'p', description: 'Internal pressure over external' },
      z.number().min(0),
    ),
    innerRadiusM: quantity({ unit: 'm', symbol: 'r_i', description: 'Inner radius' }, z.number().positive()),
    outerRadiusM: quantity({ unit: 'm', symbol: 'r_o', description: 'Outer radius' }, z.number().positive()),
  }),
  outputs: z.strictObject({
    hoopStressAtBorePa: quantity({ unit: 'Pa', symbol: 'σ_θ', description: 'Hoop stress at the bore' }),
  }),
  formula: String.raw`\sigma_\theta = p\,\frac{r_o^2 + r_i^2}{r_o^2 - r_i^2}`,
  range: '0 < r_i < r_o, p ≥ 0, elastic',
  source: [published('timoshenko-strength-2 §11')],
  compute: ({ pressurePaGauge: p, innerRadiusM: ri, outerRadiusM: ro }, log) => {
    if (ro <= ri) {
      return fail({
        code: 'CALC_OUT_OF_RANGE',
        message: `outerRadiusM: ${shown(ro)} m given; more than innerRadiusM (${shown(ri)} m) is needed`,
        field: 'outerRadiusM',
        given: ro,
        allowed: `> ${shown(ri)} m`,
      });
    }
    const hoopStressAtBorePa = (p * (ro ** 2 + ri ** 2)) / (ro ** 2 - ri ** 2);
    log?.({
      symbol: 'σ_θ',
      formula: 'p (r_o² + r_i²) / (r_o² − r_i²)',
      substituted: `${shown(p)} × (${shown(ro)}² + ${shown(ri)}²) / (${shown(ro)}² − ${shown(ri)}²)`,
      value: hoopStressAtBorePa,
      unit: 'Pa',
    });
    return succeed({ hoopStressAtBorePa });
  },
});
