import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { criticalPressureRatioOf } from './isentropic-flow.js';
import { isentropicExponent } from './relief-fields.js';

/**
 * Ratio of throat to inlet pressure at which the flow of a perfect gas chokes.
 *
 *   r_c = (2/(k+1))^(k/(k−1)), e^(−1/2) at k = 1
 *
 * @param isentropicExponent k [-]
 * @returns criticalRatio r_c [-]
 * @range 1 ≤ k ≤ 2
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020; iso-4126-1 (closed form)
 */
export const criticalPressureRatio = calculation({
  id: 'relief.criticalPressureRatio',
  title: 'Critical pressure ratio of a gas',
  inputs: z.strictObject({ isentropicExponent }),
  outputs: z.strictObject({
    criticalRatio: quantity({ unit: '1', symbol: 'r_c', description: 'Throat pressure by inlet pressure' }),
  }),
  formula: String.raw`r_c = \left(\frac{2}{k+1}\right)^{k/(k-1)}`,
  range: '1 ≤ k ≤ 2, perfect gas',
  source: [published('api-520-1:2020'), published('iso-4126-1')],
  compute: ({ isentropicExponent: k }, log) => {
    const criticalRatio = criticalPressureRatioOf(k);
    log?.({
      symbol: 'r_c',
      formula: '(2/(k + 1))^(k/(k − 1))',
      substituted: `(2/(${shown(k)} + 1))^(${shown(k)}/(${shown(k)} − 1))`,
      value: criticalRatio,
      unit: '1',
    });
    return succeed({ criticalRatio });
  },
});
