import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/**
 * Overall coefficient of two films and fouling in series, on one area.
 *
 *   1/U_C = 1/h1 + 1/h2,  1/U = 1/U_C + R
 *
 * @param firstCoefficientWPerM2K  h1 [W/(m²·K)]
 * @param secondCoefficientWPerM2K h2, on the same area [W/(m²·K)]
 * @param foulingResistanceM2KPerW R, fouling and wall [m²·K/W]
 * @returns cleanCoefficientWPerM2K U_C, overallCoefficientWPerM2K U [W/(m²·K)]
 * @range thin wall; put the wall e/k into R
 * @source kern-1950 ch. 6
 */
export const overallCoefficient = calculation({
  id: 'heat.overallCoefficient',
  title: 'Overall heat transfer coefficient',
  inputs: z.strictObject({
    firstCoefficientWPerM2K: heatFields.positive('W/(m2.K)', 'h1', 'First film coefficient'),
    secondCoefficientWPerM2K: heatFields.positive('W/(m2.K)', 'h2', 'Second film coefficient, same area'),
    foulingResistanceM2KPerW: quantity(
      { unit: 'm2.K/W', symbol: 'R', description: 'Fouling resistance, with that of the wall' },
      z.number().min(0),
    ),
  }),
  outputs: z.strictObject({
    cleanCoefficientWPerM2K: quantity({
      unit: 'W/(m2.K)',
      symbol: 'U_C',
      description: 'Overall coefficient, clean',
    }),
    overallCoefficientWPerM2K: quantity({
      unit: 'W/(m2.K)',
      symbol: 'U',
      description: 'Overall coefficient with fouling',
    }),
  }),
  formula: String.raw`\frac{1}{U} = \frac{1}{h_1} + \frac{1}{h_2} + R`,
  range: 'films on one area, thin wall',
  source: [published('kern-1950 ch. 6')],
  compute: (
    { firstCoefficientWPerM2K: h1, secondCoefficientWPerM2K: h2, foulingResistanceM2KPerW: R },
    log,
  ) => {
    const cleanResistance = 1 / h1 + 1 / h2;
    const cleanCoefficientWPerM2K = 1 / cleanResistance;
    const overallCoefficientWPerM2K = 1 / (cleanResistance + R);
    log?.({
      symbol: 'U_C',
      formula: '1/(1/h1 + 1/h2)',
      substituted: `1/(1/${shown(h1)} + 1/${shown(h2)})`,
      value: cleanCoefficientWPerM2K,
      unit: 'W/(m2.K)',
    });
    log?.({
      symbol: 'U',
      formula: '1/(1/U_C + R)',
      substituted: `1/(1/${shown(cleanCoefficientWPerM2K)} + ${shown(R)})`,
      value: overallCoefficientWPerM2K,
      unit: 'W/(m2.K)',
    });
    return succeed({ cleanCoefficientWPerM2K, overallCoefficientWPerM2K });
  },
});
