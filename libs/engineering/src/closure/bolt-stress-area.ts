import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { closureLength } from './closure-fields.js';

/** A_s = π/4 (d − 0.9382 p)². */
export const stressAreaOf = (diameter: number, pitch: number): number =>
  (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;

/**
 * Stress area of an ISO metric thread.
 *
 *   A_s = π/4 (d − 0.9382 p)²
 *
 * @param diameterM d, nominal [m]
 * @param pitchM    p [m]
 * @returns areaM2 A_s [m²]
 * @range 0 < p ≤ d / 2
 * @error CALC_OUT_OF_RANGE outside the range
 * @source iso-898-1:2013 §9.1.6.1
 */
export const boltStressArea = calculation({
  id: 'closure.boltStressArea',
  title: 'Stress area of a bolt',
  inputs: z.strictObject({
    diameterM: closureLength('d', 'Nominal diameter'),
    pitchM: closureLength('p', 'Pitch'),
  }),
  outputs: z.strictObject({
    areaM2: quantity({ unit: 'm2', symbol: 'A_s', description: 'Nominal stress area' }),
  }),
  formula: String.raw`A_s = \frac{\pi}{4}\,(d - 0.9382\,p)^2`,
  range: '0 < p ≤ d / 2, ISO metric thread',
  source: [published('iso-898-1:2013 §9.1.6.1')],
  compute: ({ diameterM: d, pitchM: p }, log) => {
    if (p > d / 2) {
      return outOfRange({
        field: 'pitchM',
        given: p,
        unit: 'm',
        allowed: `at most half of the diameter (${shown(d / 2)} m)`,
      });
    }
    const areaM2 = stressAreaOf(d, p);
    log?.(
      formulaStep({
        symbol: 'A_s',
        formula: 'π / 4 · (d − 0.9382 · p)²',
        where: { d, p },
        value: areaM2,
        unit: 'm2',
      }),
    );
    return succeed({ areaM2 });
  },
});
