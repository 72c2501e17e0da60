import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { densityKgPerM3, impellerDiameterM, reynoldsOutput, speedPerS } from './stirring-fields.js';

/**
 * Apparent viscosity of a power-law liquid at an impeller (Metzner and Otto).
 *
 *   γ = k_s N,  μ_a = K γ^(n−1),  Re = ρ N D² / μ_a
 *
 * @param metznerOttoConstant k_s of the impeller [-]
 * @param consistencyPaSn     K [Pa·sⁿ]
 * @param flowIndex           n [-]
 * @param speedPerS           N [1/s]
 * @param densityKgPerM3      ρ [kg/m³]
 * @param impellerDiameterM   D [m]
 * @returns shearRatePerS γ [1/s]; apparentViscosityPaS μ_a [Pa·s]; reynolds Re [-]
 * @range 0.1 ≤ n ≤ 2; laminar flow and the lower transition
 * @error CALC_OUT_OF_RANGE outside the range
 * @source metzner-otto-1957 eq. 4
 */
export const metznerOtto = calculation({
  id: 'stirring.metznerOtto',
  title: 'Apparent viscosity at the impeller',
  inputs: z.strictObject({
    metznerOttoConstant: quantity(
      { unit: '1', symbol: 'k_s', description: 'Shear rate by speed, a constant of the impeller' },
      z.number().positive().max(200),
    ),
    consistencyPaSn: quantity(
      { unit: 'Pa.s', symbol: 'K', description: 'Consistency, in Pa·sⁿ' },
      z.number().positive(),
    ),
    flowIndex: quantity(
      { unit: '1', symbol: 'n', description: 'Flow index: below 1 shear-thinning' },
      z.number().min(0.1).max(2),
    ),
    speedPerS,
    densityKgPerM3,
    impellerDiameterM,
  }),
  outputs: z.strictObject({
    shearRatePerS: quantity({ unit: '1/s', symbol: 'γ', description: 'Mean shear rate at the impeller' }),
    apparentViscosityPaS: quantity({
      unit: 'Pa.s',
      symbol: 'μ_a',
      description: 'Apparent viscosity at that shear rate',
    }),
    reynolds: reynoldsOutput,
  }),
  formula: String.raw`\dot\gamma = k_s N,\quad \mu_a = K \dot\gamma^{\,n-1},\quad Re = \frac{\rho N D^2}{\mu_a}`,
  range: '0.1 ≤ n ≤ 2; laminar flow and the lower transition',
  source: [published('metzner-otto-1957')],
  compute: (inputs, log) => {
    const { metznerOttoConstant: ks, consistencyPaSn: k, flowIndex: n, speedPerS } = inputs;
    const shearRatePerS = ks * speedPerS;
    const apparentViscosityPaS = k * shearRatePerS ** (n - 1);
    const reynolds =
      (inputs.densityKgPerM3 * speedPerS * inputs.impellerDiameterM ** 2) / apparentViscosityPaS;
    if (log) {
      log({
        symbol: 'γ',
        formula: 'k_s N',
        substituted: `${shown(ks)} × ${shown(speedPerS)}`,
        value: shearRatePerS,
        unit: '1/s',
      });
      log({
        symbol: 'μ_a',
        formula: 'K γ^(n − 1)',
        substituted: `${shown(k)} × ${shown(shearRatePerS)}^(${shown(n)} − 1)`,
        value: apparentViscosityPaS,
        unit: 'Pa.s',
      });
      log({
        symbol: 'Re',
        formula: 'ρ N D² / μ_a',
        substituted: `${shown(inputs.densityKgPerM3)} × ${shown(speedPerS)} × ${shown(inputs.impellerDiameterM)}² / ${shown(apparentViscosityPaS)}`,
        value: reynolds,
        unit: '1',
      });
    }
    return succeed({ shearRatePerS, apparentViscosityPaS, reynolds });
  },
});
