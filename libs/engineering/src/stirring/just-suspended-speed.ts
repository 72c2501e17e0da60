import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { impellerDiameterM } from './stirring-fields.js';

const gravity = 9.80665;

/**
 * Speed at which the last solids leave the bottom (Zwietering).
 *
 *   N_js = S ν^0.1 d_p^0.2 (g Δρ/ρ_L)^0.45 X^0.13 D^(−0.85)
 *
 * @param zwieteringConstant    S of impeller, clearance and bottom [-]
 * @param kinematicViscosityM2PerS ν [m²/s]
 * @param particleDiameterM     d_p [m]
 * @param solidDensityKgPerM3   ρ_S [kg/m³]
 * @param liquidDensityKgPerM3  ρ_L [kg/m³]
 * @param solidsMassPercent     X, solids by liquid [%]
 * @param impellerDiameterM     D [m]
 * @returns speedPerS N_js [1/s]
 * @range d_p 0.05 to 3 mm, Δρ 50 to 2000 kg/m³, X 0.1 to 20 %, solids heavier than the liquid
 * @error CALC_OUT_OF_RANGE outside the range
 * @source zwietering-1958
 */
export const justSuspendedSpeed = calculation({
  id: 'stirring.justSuspendedSpeed',
  title: 'Speed that just suspends solids',
  inputs: z.strictObject({
    zwieteringConstant: quantity(
      { unit: '1', symbol: 'S', description: 'Constant of impeller, clearance and bottom' },
      z.number().positive().max(30),
    ),
    kinematicViscosityM2PerS: quantity(
      { unit: 'm2/s', symbol: 'ν', description: 'Kinematic viscosity of the liquid' },
      z.number().positive().max(1),
    ),
    particleDiameterM: quantity(
      { unit: 'm', symbol: 'd_p', description: 'Diameter of the particles' },
      z.number().min(5e-5).max(3e-3),
    ),
    solidDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ_S', description: 'Density of the solids' },
      z.number().positive(),
    ),
    liquidDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ_L', description: 'Density of the liquid' },
      z.number().positive(),
    ),
    solidsMassPercent: quantity(
      { unit: '%', symbol: 'X', description: 'Mass of solids by mass of liquid' },
      z.number().min(0.1).max(20),
    ),
    impellerDiameterM,
  }),
  outputs: z.strictObject({
    speedPerS: quantity({ unit: '1/s', symbol: 'N_js', description: 'Just-suspended speed' }),
  }),
  formula: String.raw`N_{js} = S\,\nu^{0.1} d_p^{0.2} \left(\frac{g\,\Delta\rho}{\rho_L}\right)^{0.45} X^{0.13} D^{-0.85}`,
  range: 'd_p 0.05 to 3 mm, Δρ 50 to 2000 kg/m³, X 0.1 to 20 %, turbulent',
  source: [published('zwietering-1958')],
  compute: (inputs, log) => {
    const { zwieteringConstant: s, kinematicViscosityM2PerS: nu, particleDiameterM: dp } = inputs;
    const { solidDensityKgPerM3, liquidDensityKgPerM3, solidsMassPercent: x, impellerDiameterM: d } = inputs;
    const difference = solidDensityKgPerM3 - liquidDensityKgPerM3;
    if (difference < 50 || difference > 2000) {
      return outOfRange({
        field: 'solidDensityKgPerM3',
        given: solidDensityKgPerM3,
        unit: 'kg/m3',
        allowed: `${shown(liquidDensityKgPerM3 + 50)} to ${shown(liquidDensityKgPerM3 + 2000)} kg/m3 (50 to 2000 above the liquid)`,
      });
    }
    const speedPerS =
      s *
      nu ** 0.1 *
      dp ** 0.2 *
      ((gravity * difference) / liquidDensityKgPerM3) ** 0.45 *
      x ** 0.13 *
      d ** -0.85;
    log?.({
      symbol: 'N_js',
      formula: 'S ν^0.1 d_p^0.2 (g Δρ/ρ_L)^0.45 X^0.13 D^(−0.85)',
      substituted: `${shown(s)} × ${shown(nu)}^0.1 × ${shown(dp)}^0.2 × (9.80665 × ${shown(difference)}/${shown(liquidDensityKgPerM3)})^0.45 × ${shown(x)}^0.13 × ${shown(d)}^(−0.85)`,
      value: speedPerS,
      unit: '1/s',
    });
    return succeed({ speedPerS });
  },
});
