import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { impellerDiameterM, speedPerS } from './stirring-fields.js';

const gravity = 9.80665;

/**
 * Power of a gassed turbine by that of the ungassed one (Hughmark).
 *
 *   P_g/P_0 = 0.10 (Q/(N V))^(−1/4) (N² D⁴/(g W V^(2/3)))^(−1/5), at most 1
 *
 * @param speedPerS         N [1/s]
 * @param impellerDiameterM D [m]
 * @param bladeWidthM       W [m]
 * @param liquidVolumeM3    V [m³]
 * @param gasFlowM3PerS     Q at the impeller [m³/s]; 0 gives 1
 * @returns powerRatio P_g/P_0 [-]
 * @range disc turbines, Q ≥ 0
 * @error CALC_OUT_OF_RANGE outside the range
 * @source hughmark-1980
 */
export const gassedPowerRatio = calculation({
  id: 'stirring.gassedPowerRatio',
  title: 'Gassed by ungassed power',
  inputs: z.strictObject({
    speedPerS,
    impellerDiameterM,
    bladeWidthM: quantity(
      { unit: 'm', symbol: 'W', description: 'Width of the impeller blades' },
      z.number().positive().max(5),
    ),
    liquidVolumeM3: quantity(
      { unit: 'm3', symbol: 'V', description: 'Volume of the liquid' },
      z.number().positive().max(1000),
    ),
    gasFlowM3PerS: quantity(
      { unit: 'm3/s', symbol: 'Q', description: 'Gas flow at the state at the impeller' },
      z.number().min(0),
    ),
  }),
  outputs: z.strictObject({
    powerRatio: quantity({ unit: '1', symbol: 'P_g/P_0', description: 'Gassed by ungassed power' }),
  }),
  formula: String.raw`\frac{P_g}{P_0} = 0.10 \left(\frac{Q}{N V}\right)^{-1/4} \left(\frac{N^2 D^4}{g\,W V^{2/3}}\right)^{-1/5} \le 1`,
  range: 'disc turbines under gas; capped at 1, which is also the value without gas',
  source: [published('hughmark-1980')],
  compute: (inputs, log) => {
    const { speedPerS: n, impellerDiameterM: d, bladeWidthM: w, liquidVolumeM3: v } = inputs;
    const { gasFlowM3PerS: q } = inputs;
    const correlated =
      q === 0 ? 1 : 0.1 * (q / (n * v)) ** -0.25 * ((n ** 2 * d ** 4) / (gravity * w * v ** (2 / 3))) ** -0.2;
    const powerRatio = Math.min(1, correlated);
    log?.({
      symbol: 'P_g/P_0',
      formula: 'min(1, 0.10 (Q/(N V))^(−1/4) (N² D⁴/(g W V^(2/3)))^(−1/5))',
      substituted: `0.10 × (${shown(q)}/(${shown(n)} × ${shown(v)}))^(−1/4) × (${shown(n)}² × ${shown(d)}⁴/(9.80665 × ${shown(w)} × ${shown(v)}^(2/3)))^(−1/5)`,
      value: powerRatio,
      unit: '1',
      ...(correlated > 1 ? { note: `the correlation gives ${shown(correlated)}; capped at 1` } : {}),
    });
    return succeed({ powerRatio });
  },
});
