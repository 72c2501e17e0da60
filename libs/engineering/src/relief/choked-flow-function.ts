import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { chokedFlowFunctionOf } from './isentropic-flow.js';
import { isentropicExponent } from './relief-fields.js';

/**
 * Flow function of a choked nozzle: mass flux divided by √(p_1 ρ_1).
 *
 *   C = √( k (2/(k+1))^((k+1)/(k−1)) )
 *
 * @param isentropicExponent k [-]
 * @returns flowFunction C [-]
 * @range 1 ≤ k ≤ 2
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020 coefficient C; valve-selection-handbook table 7-2
 */
export const chokedFlowFunction = calculation({
  id: 'relief.chokedFlowFunction',
  title: 'Flow function of a choked gas',
  inputs: z.strictObject({ isentropicExponent }),
  outputs: z.strictObject({
    flowFunction: quantity({ unit: '1', symbol: 'C', description: 'Mass flux by √(p_1 ρ_1)' }),
  }),
  formula: String.raw`C = \sqrt{k \left(\frac{2}{k+1}\right)^{(k+1)/(k-1)}}`,
  range: '1 ≤ k ≤ 2, perfect gas',
  source: [published('api-520-1:2020 coefficient C'), published('valve-selection-handbook table 7-2')],
  compute: ({ isentropicExponent: k }, log) => {
    const flowFunction = chokedFlowFunctionOf(k);
    log?.({
      symbol: 'C',
      formula: '√(k (2/(k + 1))^((k + 1)/(k − 1)))',
      substituted: `√(${shown(k)} × (2/(${shown(k)} + 1))^((${shown(k)} + 1)/(${shown(k)} − 1)))`,
      value: flowFunction,
      unit: '1',
    });
    return succeed({ flowFunction });
  },
});
