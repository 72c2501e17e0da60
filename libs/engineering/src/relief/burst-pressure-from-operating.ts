import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';

/**
 * Burst pressure of a disc from the operating pressure that it must bear.
 *
 *   p_b,min = p_op / r,  p_s,max = p_b,min (1 + a)
 *
 * @param operatingPressurePaGauge p_op, highest in operation [Pa]
 * @param operatingRatio           r, highest ratio of operating to burst pressure [-]
 * @param manufacturingRangePlus   a, upward manufacturing range [-]
 * @returns minBurstPressurePaGauge p_b,min; maxStampedPressurePaGauge p_s,max [Pa]
 * @range 0 < r ≤ 1, 0 ≤ a ≤ 0.5
 * @error CALC_OUT_OF_RANGE outside the range
 * @source applied-process-design-1-3 p. 457
 */
export const burstPressureFromOperating = calculation({
  id: 'relief.burstPressureFromOperating',
  title: 'Burst pressure from the operating pressure',
  inputs: z.strictObject({
    operatingPressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'p_op', description: 'Highest operating pressure over atmosphere' },
      z.number().min(0),
    ),
    operatingRatio: quantity(
      { unit: '1', symbol: 'r', description: 'Highest ratio of operating to burst pressure' },
      z.number().positive().max(1),
    ),
    manufacturingRangePlus: quantity(
      { unit: '1', symbol: 'a', description: 'Upward manufacturing range, as a fraction' },
      z.number().min(0).max(0.5),
    ),
  }),
  outputs: z.strictObject({
    minBurstPressurePaGauge: quantity({
      unit: 'Pa',
      symbol: 'p_b,min',
      description: 'Least burst pressure that keeps the operating ratio',
    }),
    maxStampedPressurePaGauge: quantity({
      unit: 'Pa',
      symbol: 'p_s,max',
      description: 'Highest pressure that may be stamped on the disc ordered so',
    }),
  }),
  formula: String.raw`p_{b,\min} = \frac{p_{op}}{r},\quad p_{s,\max} = p_{b,\min} (1 + a)`,
  range: '0 < r ≤ 1, 0 ≤ a ≤ 0.5',
  source: [published('applied-process-design-1-3 p. 457')],
  compute: ({ operatingPressurePaGauge: p, operatingRatio: r, manufacturingRangePlus: a }, log) => {
    const minBurstPressurePaGauge = p / r;
    const maxStampedPressurePaGauge = minBurstPressurePaGauge * (1 + a);
    if (log) {
      log({
        symbol: 'p_b,min',
        formula: 'p_op / r',
        substituted: `${shown(p)} / ${shown(r)}`,
        value: minBurstPressurePaGauge,
        unit: 'Pa',
      });
      log({
        symbol: 'p_s,max',
        formula: 'p_b,min (1 + a)',
        substituted: `${shown(minBurstPressurePaGauge)} × (1 + ${shown(a)})`,
        value: maxStampedPressurePaGauge,
        unit: 'Pa',
      });
    }
    return succeed({ minBurstPressurePaGauge, maxStampedPressurePaGauge });
  },
});
