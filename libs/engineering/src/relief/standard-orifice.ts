import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import data from './standard-orifices.json';

const squareInchM2 = 0.0254 ** 2;

const orifices = z
  .array(
    z.strictObject({
      letter: z.string().length(1),
      areaIn2: z.number().positive(),
      source: z.string().min(1),
      basis: z.enum(['published', 'common practice', 'from memory, unverified']),
    }),
  )
  .parse(data)
  .map(({ letter, areaIn2 }) => ({ letter, areaM2: areaIn2 * squareInchM2 }));

const largest = orifices.reduce((area, orifice) => Math.max(area, orifice.areaM2), 0);

/**
 * Smallest standard orifice of flanged safety valves that is at least as large as the required area.
 *
 * @param areaM2 A, required effective area [m²]
 * @returns letter; orificeAreaM2, its effective area [m²]
 * @range 0 < A ≤ 26 in² (16 774 mm²)
 * @error CALC_OUT_OF_RANGE above the largest orifice: several valves are needed
 * @source api-526:2017 table of effective orifice areas
 */
export const standardOrifice = calculation({
  id: 'relief.standardOrifice',
  title: 'Next standard orifice',
  inputs: z.strictObject({
    areaM2: quantity(
      { unit: 'm2', symbol: 'A', description: 'Required effective area' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    letter: z.string().meta({ description: 'Letter of the orifice, D to T' }),
    orificeAreaM2: quantity({ unit: 'm2', symbol: 'A_o', description: 'Effective area of that orifice' }),
  }),
  formula: String.raw`A_o = \min \{ A_i : A_i \ge A \}`,
  range: '0 < A ≤ 0.016774 m²',
  source: [published('api-526:2017 effective orifice areas'), published('fluids-1.3.1 safety_valve')],
  compute: ({ areaM2 }, log) => {
    // An area that equals an orifice but for rounding takes that orifice.
    const orifice = orifices.find((candidate) => candidate.areaM2 * (1 + 1e-12) >= areaM2);
    if (orifice === undefined) {
      return outOfRange({
        field: 'areaM2',
        given: areaM2,
        unit: 'm2',
        allowed: `up to ${shown(largest)} m2 (orifice T); beyond it several devices`,
      });
    }
    log?.({
      symbol: 'A_o',
      formula: 'smallest standard area not below A',
      substituted: `A = ${shown(areaM2)} m2: ${orifice.letter}`,
      value: orifice.areaM2,
      unit: 'm2',
    });
    return succeed({ letter: orifice.letter, orificeAreaM2: orifice.areaM2 });
  },
});
