import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { api520Edition } from './api-520-edition.js';

/**
 * Viscosity correction of liquid relief.
 *
 *   K_v = (1 + 170/Re)^(−1/2)                               10th edition
 *   K_v = (0.9935 + 2.878/Re^0.5 + 342.75/Re^1.5)^(−1)      7th edition
 *
 * @param reynolds Re in the selected orifice [-]
 * @param edition  of API 520 part I, 10th where not given
 * @returns viscosityCorrection K_v [-], at most 1
 * @range Re ≥ 80
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020; api-520-1:2000 (both as quoted in fluids-1.3.1 safety_valve)
 */
export const viscosityCorrection = calculation({
  id: 'relief.viscosityCorrection',
  title: 'Viscosity correction of liquid relief',
  inputs: z.strictObject({
    reynolds: quantity(
      { unit: '1', symbol: 'Re', description: 'Reynolds number in the selected orifice' },
      z.number().min(80),
    ),
    edition: api520Edition.optional(),
  }),
  outputs: z.strictObject({
    viscosityCorrection: quantity({ unit: '1', symbol: 'K_v', description: 'Divides the required area' }),
  }),
  formula: String.raw`K_v = \left(1 + \frac{170}{Re}\right)^{-1/2} \;\text{(10th)},\quad K_v = \left(0.9935 + \frac{2.878}{Re^{0.5}} + \frac{342.75}{Re^{1.5}}\right)^{-1} \;\text{(7th)}`,
  range: 'Re ≥ 80',
  source: [
    published('api-520-1:2020 viscosity correction'),
    published('api-520-1:2000 viscosity correction'),
    published('fluids-1.3.1 safety_valve'),
  ],
  compute: ({ reynolds: re, edition = '10th' }, log) => {
    const value =
      edition === '10th'
        ? (1 + 170 / re) ** -0.5
        : Math.min(1, 1 / (0.9935 + 2.878 / re ** 0.5 + 342.75 / re ** 1.5));
    log?.({
      symbol: 'K_v',
      formula: edition === '10th' ? '(1 + 170/Re)^(−1/2)' : '(0.9935 + 2.878/Re^0.5 + 342.75/Re^1.5)^(−1)',
      substituted: `Re = ${shown(re)}`,
      value,
      unit: '1',
      note: `API 520 part I, ${edition} edition`,
    });
    return succeed({ viscosityCorrection: value });
  },
});
