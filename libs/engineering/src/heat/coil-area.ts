import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/**
 * Heat transfer area for a duty.
 *
 *   A = Q / (U ΔT)
 *
 * @param dutyW                     Q [W]
 * @param overallCoefficientWPerM2K U [W/(m²·K)]
 * @param temperatureDifferenceK    ΔT, effective (logarithmic mean where the medium changes) [K]
 * @returns areaM2 A [m²]
 * @range Q ≥ 0, U > 0, ΔT > 0
 * @source kern-1950 ch. 20
 */
export const coilArea = calculation({
  id: 'heat.coilArea',
  title: 'Area of a coil or jacket for a duty',
  inputs: z.strictObject({
    dutyW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat flow' }, z.number().min(0)),
    overallCoefficientWPerM2K: heatFields.overallCoefficientWPerM2K,
    temperatureDifferenceK: heatFields.positive('K', 'ΔT', 'Effective temperature difference'),
  }),
  outputs: z.strictObject({
    areaM2: quantity({ unit: 'm2', symbol: 'A', description: 'Heat transfer area' }),
  }),
  formula: String.raw`A = \frac{Q}{U\,\Delta T}`,
  range: 'Q ≥ 0, U > 0, ΔT > 0',
  source: [published('kern-1950 ch. 20')],
  compute: ({ dutyW, overallCoefficientWPerM2K, temperatureDifferenceK }, log) => {
    const areaM2 = dutyW / (overallCoefficientWPerM2K * temperatureDifferenceK);
    log?.({
      symbol: 'A',
      formula: 'Q / (U ΔT)',
      substituted: `${shown(dutyW)} / (${shown(overallCoefficientWPerM2K)} × ${shown(temperatureDifferenceK)})`,
      value: areaM2,
      unit: 'm2',
    });
    return succeed({ areaM2 });
  },
});
