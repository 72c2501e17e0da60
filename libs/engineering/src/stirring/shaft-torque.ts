import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { speedPerS, torqueOutput } from './stirring-fields.js';

/**
 * Torque of a shaft that carries a power.
 *
 *   M = P / (2π N)
 *
 * @param powerW    P [W]
 * @param speedPerS N [1/s]
 * @returns torqueNm M [N·m]
 * @range P ≥ 0, N > 0
 * @error CALC_OUT_OF_RANGE outside the range
 * @source mccabe-smith-harriott-5 ch. 9 (definition of power)
 */
export const shaftTorque = calculation({
  id: 'stirring.torque',
  title: 'Torque of a power at a speed',
  inputs: z.strictObject({
    powerW: quantity({ unit: 'W', symbol: 'P', description: 'Power on the shaft' }, z.number().min(0)),
    speedPerS,
  }),
  outputs: z.strictObject({ torqueNm: torqueOutput }),
  formula: String.raw`M = \frac{P}{2 \pi N}`,
  range: 'P ≥ 0, N > 0',
  source: [published('mccabe-smith-harriott-5 ch. 9')],
  compute: ({ powerW, speedPerS: n }, log) => {
    const torqueNm = powerW / (2 * Math.PI * n);
    log?.({
      symbol: 'M',
      formula: 'P / (2π N)',
      substituted: `${shown(powerW)} / (2π × ${shown(n)})`,
      value: torqueNm,
      unit: 'N.m',
    });
    return succeed({ torqueNm });
  },
});
