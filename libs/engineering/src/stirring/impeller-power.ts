import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import {
  densityKgPerM3,
  impellerDiameterM,
  powerNumberField,
  powerOutput,
  reynoldsOutput,
  speedPerS,
  torqueOutput,
  viscosityPaS,
} from './stirring-fields.js';

/**
 * Power and torque of an impeller from its power number.
 *
 *   Re = ρ N D² / μ,  P = Np ρ N³ D⁵,  M = P / (2π N)
 *
 * @param impellerDiameterM D [m]
 * @param speedPerS         N [1/s]
 * @param densityKgPerM3    ρ [kg/m³]
 * @param viscosityPaS      μ [Pa·s]
 * @param powerNumber       Np at this Reynolds number [-]
 * @returns reynolds Re [-]; powerW P [W]; torqueNm M [N·m]
 * @range all positive, Np ≥ 0
 * @error CALC_OUT_OF_RANGE outside the range
 * @source mccabe-smith-harriott-5 ch. 9
 */
export const impellerPower = calculation({
  id: 'stirring.power',
  title: 'Power of an impeller',
  inputs: z.strictObject({
    impellerDiameterM,
    speedPerS,
    densityKgPerM3,
    viscosityPaS,
    powerNumber: powerNumberField,
  }),
  outputs: z.strictObject({ reynolds: reynoldsOutput, powerW: powerOutput, torqueNm: torqueOutput }),
  formula: String.raw`Re = \frac{\rho N D^2}{\mu},\quad P = Np\,\rho N^3 D^5,\quad M = \frac{P}{2 \pi N}`,
  range: 'D, N, ρ, μ > 0, Np ≥ 0',
  source: [published('mccabe-smith-harriott-5 ch. 9')],
  compute: (
    { impellerDiameterM: d, speedPerS: n, densityKgPerM3: rho, viscosityPaS: mu, powerNumber: np },
    log,
  ) => {
    const reynolds = (rho * n * d ** 2) / mu;
    const powerW = np * rho * n ** 3 * d ** 5;
    const torqueNm = powerW / (2 * Math.PI * n);
    if (log) {
      log({
        symbol: 'Re',
        formula: 'ρ N D² / μ',
        substituted: `${shown(rho)} × ${shown(n)} × ${shown(d)}² / ${shown(mu)}`,
        value: reynolds,
        unit: '1',
      });
      log({
        symbol: 'P',
        formula: 'Np ρ N³ D⁵',
        substituted: `${shown(np)} × ${shown(rho)} × ${shown(n)}³ × ${shown(d)}⁵`,
        value: powerW,
        unit: 'W',
      });
      log({
        symbol: 'M',
        formula: 'P / (2π N)',
        substituted: `${shown(powerW)} / (2π × ${shown(n)})`,
        value: torqueNm,
        unit: 'N.m',
      });
    }
    return succeed({ reynolds, powerW, torqueNm });
  },
});
