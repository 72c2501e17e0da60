import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import {
  densityKgPerM3,
  impellerDiameterM,
  powerNumberField,
  speedPerS,
  vesselDiameterM,
  viscosityPaS,
} from './stirring-fields.js';

/** Np^(1/3) Re at which the two branches of turbine mixing meet: (183² / 5.2). */
const turbulentFrom = 183 ** 2 / 5.2;
/** Below this the transitional branch does not hold. */
const transitionalFrom = 200;
/** Highest Reynolds number of the ribbon correlation. */
const ribbonTo = 100;

/**
 * Time to blend to 95 % (turbines, by Grenville) or to homogeneity (helical ribbons, by Grenville and others).
 *
 *   Fo = μ θ / (ρ T²),  C = Np^(1/3) Re
 *   Fo = 5.2/C            turbulent, C ≥ 6440
 *   Fo = (183/C)²         transition, 200 ≤ C < 6440
 *   θ = 896 000 K_L^(−1.69) / N    ribbon, laminar, where K_L is given
 *
 * The power number is P/(ρ N³ D⁵), without the acceleration of gravity.
 *
 * @param impellerDiameterM D, vesselDiameterM T [m]; liquid height about T
 * @param speedPerS         N [1/s]
 * @param densityKgPerM3    ρ [kg/m³]
 * @param viscosityPaS      μ [Pa·s]
 * @param powerNumber       Np [-]
 * @param laminarConstant   K_L of a helical ribbon [-]; without it the impeller counts as a turbine
 * @returns blendTimeS θ [s]; regime
 * @range C ≥ 200 for turbines (D/T 1/3 to 1/2, H = T); Re ≤ 100 for ribbons
 * @error CALC_OUT_OF_RANGE outside the range
 * @source grenville-1992; handbook-industrial-mixing ch. 9, eq. for blend time and example 9-6
 */
export const blendTime = calculation({
  id: 'stirring.blendTime',
  title: 'Blend time',
  inputs: z.strictObject({
    impellerDiameterM,
    vesselDiameterM,
    speedPerS,
    densityKgPerM3,
    viscosityPaS,
    powerNumber: powerNumberField,
    laminarConstant: quantity(
      { unit: '1', symbol: 'K_L', description: 'Laminar constant of a helical ribbon; absent for turbines' },
      z.number().min(100).max(1500),
    ).optional(),
  }),
  outputs: z.strictObject({
    blendTimeS: quantity({ unit: 's', symbol: 'θ', description: 'Time to blend' }),
    regime: z.enum(['laminar', 'transition', 'turbulent']).meta({ description: 'Branch of the correlation' }),
  }),
  formula: String.raw`\frac{\mu\,\theta}{\rho T^2} = \frac{5.2}{C}\;(C \ge 6440),\quad \left(\frac{183}{C}\right)^2\;(200 \le C < 6440),\quad C = Np^{1/3} Re;\quad \theta = \frac{896000}{K_L^{1.69} N}\;\text{(ribbon)}`,
  range: 'turbines: Np^(1/3) Re ≥ 200, D/T 1/3 to 1/2, H about T; ribbons: Re ≤ 100',
  source: [published('grenville-1992'), published('handbook-industrial-mixing ch. 9')],
  compute: (inputs, log) => {
    const { impellerDiameterM: d, vesselDiameterM: t, speedPerS: n, densityKgPerM3: rho } = inputs;
    const { viscosityPaS: mu, powerNumber: np, laminarConstant } = inputs;
    const reynolds = (rho * n * d ** 2) / mu;
    if (laminarConstant !== undefined) {
      if (reynolds > ribbonTo) {
        return outOfRange({
          field: 'speedPerS',
          given: n,
          unit: '1/s',
          allowed: `Re up to ${String(ribbonTo)} for a ribbon (here ${shown(reynolds)})`,
        });
      }
      const blendTimeS = (896_000 * laminarConstant ** -1.69) / n;
      log?.({
        symbol: 'θ',
        formula: '896000 K_L^(−1.69) / N',
        substituted: `896000 × ${shown(laminarConstant)}^(−1.69) / ${shown(n)}`,
        value: blendTimeS,
        unit: 's',
      });
      return succeed({ blendTimeS, regime: 'laminar' as const });
    }
    const constant = Math.cbrt(np) * reynolds;
    if (constant < transitionalFrom) {
      return outOfRange({
        field: 'viscosityPaS',
        given: mu,
        unit: 'Pa.s',
        allowed: `Np^(1/3) Re from 200 (here ${shown(constant)}); below it take a ribbon and give laminarConstant`,
      });
    }
    const turbulent = constant >= turbulentFrom;
    const fourier = turbulent ? 5.2 / constant : (183 / constant) ** 2;
    const blendTimeS = (fourier * rho * t ** 2) / mu;
    if (log) {
      log({
        symbol: 'C',
        formula: 'Np^(1/3) Re',
        substituted: `${shown(np)}^(1/3) × ${shown(reynolds)}`,
        value: constant,
        unit: '1',
        note: turbulent ? 'turbulent' : 'transition',
      });
      log({
        symbol: 'θ',
        formula: turbulent ? '5.2/C × ρ T²/μ' : '(183/C)² × ρ T²/μ',
        substituted: `${shown(fourier)} × ${shown(rho)} × ${shown(t)}² / ${shown(mu)}`,
        value: blendTimeS,
        unit: 's',
      });
    }
    return succeed({ blendTimeS, regime: turbulent ? ('turbulent' as const) : ('transition' as const) });
  },
});
