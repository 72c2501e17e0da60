import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { drainage as drainageField, environmentFactor, wettedAreaM2 } from './relief-fields.js';

const squareFootM2 = 0.3048 ** 2;
/** British thermal unit (international table) per hour [W]. */
const btuPerHourW = 1055.05585262 / 3600;
/** Coefficients as printed, for Btu/h and ft². */
const coefficients = { adequate: 21_000, inadequate: 34_500 } as const;

/** Heat taken up through the wetted wall in an open pool fire [W]. */
export const fireHeatOf = (
  wettedAreaM2: number,
  environmentFactor: number,
  drainage: keyof typeof coefficients,
): number => coefficients[drainage] * environmentFactor * (wettedAreaM2 / squareFootM2) ** 0.82 * btuPerHourW;

/**
 * Heat taken up by a liquid-wetted vessel in an open pool fire.
 *
 *   Q = C F A^0.82    C = 21 000 (drained) or 34 500 Btu/(h ft^1.64); about 43 200 and 70 900 in W, m²
 *
 * @param wettedAreaM2      A [m²]
 * @param environmentFactor F [-]
 * @param drainage          adequate or inadequate drainage and fire fighting
 * @returns heatW Q [W]
 * @range 0 ≤ A, 0 < F ≤ 1
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-521:2020 fire, wetted vessels (formula as read in design guides)
 */
export const fireHeat = calculation({
  id: 'relief.fireHeat',
  title: 'Heat input of an open fire',
  inputs: z.strictObject({ wettedAreaM2, environmentFactor, drainage: drainageField }),
  outputs: z.strictObject({
    heatW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat taken up by the liquid' }),
  }),
  formula: String.raw`Q = C\,F\,A^{0.82},\quad C = 21000 \text{ or } 34500\ \mathrm{Btu/(h\,ft^{1.64})}`,
  range: 'open pool fire, wetted wall up to 7.6 m above the flame, 0 < F ≤ 1',
  source: [published('api-521:2020 fire, wetted vessels')],
  compute: ({ wettedAreaM2: area, environmentFactor: factor, drainage }, log) => {
    const heatW = fireHeatOf(area, factor, drainage);
    log?.({
      symbol: 'Q',
      formula: 'C F A^0.82 (Btu/h, ft²), converted',
      substituted: `${String(coefficients[drainage])} × ${shown(factor)} × ${shown(area / squareFootM2)}^0.82 × ${shown(btuPerHourW)}`,
      value: heatW,
      unit: 'W',
      note: `${drainage} drainage and fire fighting`,
    });
    return succeed({ heatW });
  },
});
