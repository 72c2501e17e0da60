import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { length } from './pressure-fields.js';

/**
 * Permissible internal pressure of a glass tube with open ends, undamaged, without thermal load.
 *
 *   p = 20 σ s / (d_o − s)      p [bar], σ [N/mm²], s and d_o alike
 *
 * @param permissibleStressPa σ [Pa], 7 N/mm² for borosilicate glass 3.3
 * @returns pressureBarGauge p [bar]
 * @range 0 < s < d_o / 2
 * @error CALC_OUT_OF_RANGE outside the range
 * @source en-1595 (permissible stress); glass tube property sheet (formula)
 */
export const glassTubePressure = calculation({
  id: 'strength.glassTubePressure',
  title: 'Permissible pressure of a glass tube',
  inputs: z.strictObject({
    outerDiameterM: length('d_o', 'Outer diameter'),
    thicknessM: length('s', 'Smallest wall thickness'),
    permissibleStressPa: quantity(
      {
        unit: 'Pa',
        symbol: 'σ',
        description: 'Permissible tensile stress; 7 N/mm² for borosilicate glass 3.3',
      },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    pressureBarGauge: quantity({
      unit: 'bar',
      symbol: 'p',
      description: 'Permissible internal pressure (gauge)',
    }),
  }),
  formula: String.raw`p = \frac{20\,\sigma\,s}{d_o - s}`,
  range: '0 < s < d_o / 2; tube undamaged, ends open, no thermal stress',
  source: [published('en-1595'), published('glass-tube-property-sheet')],
  compute: ({ outerDiameterM: outer, thicknessM: s, permissibleStressPa }, log) => {
    if (s >= outer / 2) {
      return outOfRange({
        field: 'thicknessM',
        given: s,
        unit: 'm',
        allowed: `less than half of outerDiameterM (${shown(outer / 2)} m)`,
      });
    }
    const stress = permissibleStressPa / 1e6;
    const pressureBarGauge = (20 * stress * s) / (outer - s);
    log?.(
      formulaStep({
        symbol: 'p',
        formula: '20 · σ · s / (d_o − s)',
        where: { σ: stress, s, d_o: outer },
        value: pressureBarGauge,
        unit: 'bar',
        note: 'σ in N/mm²; tube undamaged, ends open, no thermal stress',
      }),
    );
    return succeed({ pressureBarGauge });
  },
});
