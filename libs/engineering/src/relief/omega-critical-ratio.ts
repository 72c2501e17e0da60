import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { omegaCriticalRatioOf } from './omega-method.js';

/**
 * Critical pressure ratio of a two-phase mixture by the omega method, explicit fit.
 *
 *   η_c = (1 + (1.0446 − 0.0093431 ω^0.5) ω^(−0.56261))^(−0.70356 + 0.014685 ln ω)
 *
 * @param omega ω, compressibility of the mixture [-]
 * @returns criticalRatio η_c [-]
 * @range 0.01 ≤ ω ≤ 100 (within 1 % of the implicit equation there)
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020 annex C, figure C.1
 */
export const omegaCriticalRatio = calculation({
  id: 'relief.omegaCriticalRatio',
  title: 'Critical pressure ratio of a two-phase mixture',
  inputs: z.strictObject({
    omega: quantity(
      { unit: '1', symbol: 'ω', description: 'Omega parameter of the mixture' },
      z.number().min(0.01).max(100),
    ),
  }),
  outputs: z.strictObject({
    criticalRatio: quantity({ unit: '1', symbol: 'η_c', description: 'Throat pressure by inlet pressure' }),
  }),
  formula: String.raw`\eta_c = \left(1 + (1.0446 - 0.0093431\,\omega^{0.5})\,\omega^{-0.56261}\right)^{-0.70356 + 0.014685 \ln \omega}`,
  range: '0.01 ≤ ω ≤ 100',
  source: [published('api-520-1:2020 annex C'), published('polykin-042c653 flow/prv')],
  compute: ({ omega }, log) => {
    const criticalRatio = omegaCriticalRatioOf(omega);
    log?.({
      symbol: 'η_c',
      formula: '(1 + (1.0446 − 0.0093431 ω^0.5) ω^(−0.56261))^(−0.70356 + 0.014685 ln ω)',
      substituted: `ω = ${shown(omega)}`,
      value: criticalRatio,
      unit: '1',
    });
    return succeed({ criticalRatio });
  },
});
