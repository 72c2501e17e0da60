import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { published } from '../source-reference.js';

const gap = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive());

/**
 * Torque of a magnetic coupling with the second gap over that with the first, the design otherwise alike. The gap
 * is the whole distance between the magnets: air, can, liquid, encapsulation.
 *
 *   T_2/T_1 = (g_1/g_2)²
 *
 * @returns torqueRatio [-]
 * @range gaps above zero, of the same order
 * @source magnetic drive pump chapter of a pump handbook (law read, gaps as printed there)
 */
export const gapTorqueRatio = calculation({
  id: 'coupling.gapTorqueRatio',
  title: 'Torque of a magnetic coupling with another gap',
  inputs: z.strictObject({
    firstGapM: gap('g_1', 'Gap between the magnets, first design'),
    secondGapM: gap('g_2', 'Gap between the magnets, second design'),
  }),
  outputs: z.strictObject({
    torqueRatio: quantity({
      unit: '1',
      symbol: 'k_g',
      description: 'Torque with the second gap over the first',
    }),
  }),
  formula: String.raw`k_g = (g_1/g_2)^2`,
  range: 'gaps above zero and of the same order; magnets, poles and diameter alike',
  source: [published('pump-handbook magnetic drive pumps')],
  compute: ({ firstGapM: g_1, secondGapM: g_2 }, log) => {
    const torqueRatio = (g_1 / g_2) ** 2;
    log?.(
      formulaStep({
        symbol: 'k_g',
        formula: '(g_1 / g_2)²',
        where: { g_1, g_2 },
        value: torqueRatio,
        unit: '1',
      }),
    );
    return succeed({ torqueRatio });
  },
});
