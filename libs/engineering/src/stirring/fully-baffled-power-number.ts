import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';

/**
 * Highest power number of a paddle or turbine with straight blades, fully baffled and turbulent.
 *
 *   Np = 8.3 (2θ/π)^0.9 n^0.7 (b/d) sin^1.6 θ
 *
 * Four baffles of a tenth of the vessel diameter do not reach it for a six-blade turbine (stirring.powerNumber).
 *
 * @param bladeCount             n [-]
 * @param bladeWidthOverDiameter b/d [-]
 * @param bladeAngleDeg          θ to the plane of rotation [°]
 * @returns powerNumber Np [-]
 * @range 1 ≤ n ≤ 12, 0 < b/d ≤ 2, 0 < θ ≤ 90°; fitted for 0.54 ≤ n^0.7 b/d ≤ 1.6 where θ = 90°
 * @error CALC_OUT_OF_RANGE outside the range
 * @source kamei-hiraoka-1997
 */
export const fullyBaffledPowerNumber = calculation({
  id: 'stirring.fullyBaffledPowerNumber',
  title: 'Power number of a fully baffled paddle or turbine',
  inputs: z.strictObject({
    bladeCount: quantity(
      { unit: '1', symbol: 'n', description: 'Number of blades' },
      z.number().int().min(1).max(12),
    ),
    bladeWidthOverDiameter: quantity(
      { unit: '1', symbol: 'b/d', description: 'Blade width by impeller diameter' },
      z.number().positive().max(2),
    ),
    bladeAngleDeg: quantity(
      { unit: 'deg', symbol: 'θ', description: 'Blade angle to the plane of rotation' },
      z.number().positive().max(90),
    ),
  }),
  outputs: z.strictObject({
    powerNumber: quantity({ unit: '1', symbol: 'Np', description: 'Highest power number' }),
  }),
  formula: String.raw`Np = 8.3 \left(\frac{2\theta}{\pi}\right)^{0.9} n^{0.7}\,\frac{b}{d}\,\sin^{1.6}\theta`,
  range: '1 ≤ n ≤ 12, 0 < b/d ≤ 2, 0 < θ ≤ 90°; fitted for 0.54 ≤ n^0.7 b/d ≤ 1.6',
  source: [published('kamei-hiraoka-1997')],
  compute: ({ bladeCount: n, bladeWidthOverDiameter: b, bladeAngleDeg }, log) => {
    const theta = (bladeAngleDeg * Math.PI) / 180;
    const powerNumber = 8.3 * (bladeAngleDeg / 90) ** 0.9 * n ** 0.7 * b * Math.sin(theta) ** 1.6;
    const width = n ** 0.7 * b;
    log?.({
      symbol: 'Np',
      formula: '8.3 (θ/90°)^0.9 n^0.7 (b/d) sin^1.6 θ',
      substituted: `8.3 × (${shown(bladeAngleDeg)}/90)^0.9 × ${shown(n)}^0.7 × ${shown(b)} × sin^1.6 ${shown(bladeAngleDeg)}°`,
      value: powerNumber,
      unit: '1',
      ...(width < 0.54 || width > 1.6 ? { note: 'outside 0.54 ≤ n^0.7 b/d ≤ 1.6: extrapolated' } : {}),
    });
    return succeed({ powerNumber });
  },
});
