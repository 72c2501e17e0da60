import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import {
  densityKgPerM3,
  impellerDiameterM,
  powerOutput,
  reynoldsOutput,
  speedPerS,
  viscosityPaS,
} from './stirring-fields.js';

/** Laminar for turbines up to Re 10, for close-clearance impellers up to about 100. */
const turbineLimit = 10;
const highestReynolds = 100;

/**
 * Power of an impeller in laminar flow.
 *
 *   Np = K_L / Re,  P = Np ρ N³ D⁵ = K_L μ N² D³
 *
 * @param impellerDiameterM D [m]
 * @param speedPerS         N [1/s]
 * @param densityKgPerM3    ρ [kg/m³]
 * @param viscosityPaS      μ [Pa·s]
 * @param laminarConstant   K_L of the impeller in its vessel [-]
 * @returns reynolds Re [-]; powerNumber Np [-]; powerW P [W]
 * @range Re ≤ 10 (turbines), ≤ 100 (anchors, ribbons)
 * @error CALC_OUT_OF_RANGE above Re 100
 * @source mccabe-smith-harriott-5 ch. 9, eq. for N_Re < 10
 */
export const laminarPower = calculation({
  id: 'stirring.laminarPower',
  title: 'Power of an impeller in laminar flow',
  inputs: z.strictObject({
    impellerDiameterM,
    speedPerS,
    densityKgPerM3,
    viscosityPaS,
    laminarConstant: quantity(
      { unit: '1', symbol: 'K_L', description: 'Laminar constant Np · Re of the impeller in its vessel' },
      z.number().positive().max(10_000),
    ),
  }),
  outputs: z.strictObject({
    reynolds: reynoldsOutput,
    powerNumber: quantity({ unit: '1', symbol: 'Np', description: 'Power number' }),
    powerW: powerOutput,
  }),
  formula: String.raw`Np = \frac{K_L}{Re},\quad P = K_L\,\mu N^2 D^3`,
  range: 'Re ≤ 10 for turbines, ≤ 100 for close-clearance impellers; Newtonian',
  source: [published('mccabe-smith-harriott-5 ch. 9')],
  compute: (
    { impellerDiameterM: d, speedPerS: n, densityKgPerM3: rho, viscosityPaS: mu, laminarConstant: kl },
    log,
  ) => {
    const reynolds = (rho * n * d ** 2) / mu;
    if (reynolds > highestReynolds) {
      return outOfRange({
        field: 'viscosityPaS',
        given: mu,
        unit: 'Pa.s',
        allowed: `Re up to ${String(highestReynolds)} (here ${shown(reynolds)}); beyond it use stirring.powerNumber`,
      });
    }
    const powerNumber = kl / reynolds;
    const powerW = kl * mu * n ** 2 * d ** 3;
    if (log) {
      log({
        symbol: 'Re',
        formula: 'ρ N D² / μ',
        substituted: `${shown(rho)} × ${shown(n)} × ${shown(d)}² / ${shown(mu)}`,
        value: reynolds,
        unit: '1',
        ...(reynolds > turbineLimit ? { note: 'above Re 10 only for close-clearance impellers' } : {}),
      });
      log({
        symbol: 'Np',
        formula: 'K_L / Re',
        substituted: `${shown(kl)} / ${shown(reynolds)}`,
        value: powerNumber,
        unit: '1',
      });
      log({
        symbol: 'P',
        formula: 'K_L μ N² D³',
        substituted: `${shown(kl)} × ${shown(mu)} × ${shown(n)}² × ${shown(d)}³`,
        value: powerW,
        unit: 'W',
      });
    }
    return succeed({ reynolds, powerNumber, powerW });
  },
});
