import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';

const pressure = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description });
const fraction = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: '1', symbol, description }, z.number().min(0).max(0.5));

/**
 * Window of a bursting disc below the maximum allowable pressure.
 *
 *   p_s,max = l p_max,  p_spec = p_s,max/(1 + a),  p_s,min = p_spec (1 − b)
 *   p_b,max = p_s,max (1 + t),  p_b,min = p_s,min (1 − t)
 *
 * @param maxAllowablePressurePaGauge p_max [Pa]
 * @param stampedLimitRatio           l: 1.0 sole device, 1.05 or 1.1 additional device or fire [-]
 * @param manufacturingRangePlus      a [-]
 * @param manufacturingRangeMinus     b [-]
 * @param burstTolerance              t about the stamped pressure [-]
 * @returns specified, highest and lowest stamped, highest and lowest burst pressure [Pa]
 * @range fractions 0 to 0.5, 0 < l ≤ 1.21
 * @error CALC_OUT_OF_RANGE outside the range
 * @source asme-viii-1 UG-127; applied-process-design-1-3 figures 7-31A, 7-31B
 */
export const burstPressureWindow = calculation({
  id: 'relief.burstPressureWindow',
  title: 'Window of burst pressures',
  inputs: z.strictObject({
    maxAllowablePressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'p_max', description: 'Maximum allowable pressure over atmosphere' },
      z.number().positive(),
    ),
    stampedLimitRatio: quantity(
      { unit: '1', symbol: 'l', description: 'Highest stamped by maximum allowable pressure' },
      z.number().positive().max(1.21),
    ),
    manufacturingRangePlus: fraction('a', 'Upward manufacturing range, as a fraction'),
    manufacturingRangeMinus: fraction('b', 'Downward manufacturing range, as a fraction'),
    burstTolerance: fraction('t', 'Burst tolerance about the stamped pressure, as a fraction'),
  }),
  outputs: z.strictObject({
    specifiedPressurePaGauge: pressure('p_spec', 'Pressure to be specified in the order'),
    maxStampedPressurePaGauge: pressure('p_s,max', 'Highest pressure that may be stamped'),
    minStampedPressurePaGauge: pressure('p_s,min', 'Lowest pressure that may be stamped'),
    maxBurstPressurePaGauge: pressure('p_b,max', 'Highest pressure at which the disc may burst'),
    minBurstPressurePaGauge: pressure('p_b,min', 'Lowest pressure at which the disc may burst'),
  }),
  formula: String.raw`p_{s,\max} = l\,p_{\max},\; p_{spec} = \frac{p_{s,\max}}{1 + a},\; p_{s,\min} = p_{spec}(1 - b),\; p_{b,\max} = p_{s,\max}(1 + t),\; p_{b,\min} = p_{s,\min}(1 - t)`,
  range: 'a, b, t from 0 to 0.5; 0 < l ≤ 1.21',
  source: [published('asme-viii-1 UG-127'), published('applied-process-design-1-3 figures 7-31A, 7-31B')],
  compute: (inputs, log) => {
    const { maxAllowablePressurePaGauge: pMax, stampedLimitRatio: l, burstTolerance: t } = inputs;
    const { manufacturingRangePlus: a, manufacturingRangeMinus: b } = inputs;
    const maxStamped = l * pMax;
    const specified = maxStamped / (1 + a);
    const minStamped = specified * (1 - b);
    const maxBurst = maxStamped * (1 + t);
    const minBurst = minStamped * (1 - t);
    if (log) {
      log({
        symbol: 'p_s,max',
        formula: 'l p_max',
        substituted: `${shown(l)} × ${shown(pMax)}`,
        value: maxStamped,
        unit: 'Pa',
        note: 'l highest stamped by maximum allowable pressure',
      });
      log({
        symbol: 'p_spec',
        formula: 'p_s,max / (1 + a)',
        substituted: `${shown(maxStamped)} / (1 + ${shown(a)})`,
        value: specified,
        unit: 'Pa',
      });
      log({
        symbol: 'p_s,min',
        formula: 'p_spec (1 − b)',
        substituted: `${shown(specified)} × (1 − ${shown(b)})`,
        value: minStamped,
        unit: 'Pa',
      });
      log({
        symbol: 'p_b,max',
        formula: 'p_s,max (1 + t)',
        substituted: `${shown(maxStamped)} × (1 + ${shown(t)})`,
        value: maxBurst,
        unit: 'Pa',
      });
      log({
        symbol: 'p_b,min',
        formula: 'p_s,min (1 − t)',
        substituted: `${shown(minStamped)} × (1 − ${shown(t)})`,
        value: minBurst,
        unit: 'Pa',
      });
    }
    return succeed({
      specifiedPressurePaGauge: specified,
      maxStampedPressurePaGauge: maxStamped,
      minStampedPressurePaGauge: minStamped,
      maxBurstPressurePaGauge: maxBurst,
      minBurstPressurePaGauge: minBurst,
    });
  },
});
