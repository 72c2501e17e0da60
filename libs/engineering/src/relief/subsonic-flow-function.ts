import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { criticalPressureRatioOf, subsonicFlowFunctionOf } from './isentropic-flow.js';
import { isentropicExponent } from './relief-fields.js';

/**
 * Flow function of a nozzle that is not choked: mass flux divided by √(2 p_1 ρ_1).
 *
 *   ψ = √( k/(k−1) (r^(2/k) − r^((k+1)/k)) )
 *
 * @param isentropicExponent k [-]
 * @param pressureRatio      r = p_2/p_1 [-]
 * @returns flowFunction ψ [-]
 * @range 1 ≤ k ≤ 2, r_c ≤ r ≤ 1
 * @error CALC_OUT_OF_RANGE outside the range; below r_c the flow is choked
 * @source applied-process-design-1-3 table 7-11 (printed as 735 ψ)
 */
export const subsonicFlowFunction = calculation({
  id: 'relief.subsonicFlowFunction',
  title: 'Flow function of a gas below the critical pressure drop',
  inputs: z.strictObject({
    isentropicExponent,
    pressureRatio: quantity(
      { unit: '1', symbol: 'r', description: 'Outlet pressure by inlet pressure, both absolute' },
      z.number().positive().max(1),
    ),
  }),
  outputs: z.strictObject({
    flowFunction: quantity({ unit: '1', symbol: 'ψ', description: 'Mass flux by √(2 p_1 ρ_1)' }),
  }),
  formula: String.raw`\psi = \sqrt{\frac{k}{k-1}\left(r^{2/k} - r^{(k+1)/k}\right)}`,
  range: '1 ≤ k ≤ 2, r_c ≤ r ≤ 1, perfect gas',
  source: [published('applied-process-design-1-3 table 7-11')],
  compute: ({ isentropicExponent: k, pressureRatio: r }, log) => {
    const critical = criticalPressureRatioOf(k);
    if (r < critical * (1 - 1e-9)) {
      return outOfRange({
        field: 'pressureRatio',
        given: r,
        unit: '',
        allowed: `${shown(critical)} to 1; below it the flow is choked (relief.chokedFlowFunction)`,
      });
    }
    const flowFunction = subsonicFlowFunctionOf(k, r);
    log?.({
      symbol: 'ψ',
      formula: '√(k/(k − 1) × (r^(2/k) − r^((k + 1)/k)))',
      substituted: `√(${shown(k)}/(${shown(k)} − 1) × (${shown(r)}^(2/${shown(k)}) − ${shown(r)}^((${shown(k)} + 1)/${shown(k)})))`,
      value: flowFunction,
      unit: '1',
    });
    return succeed({ flowFunction });
  },
});
