import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import {
  densityKgPerM3,
  impellerDiameterM,
  reynoldsOutput,
  speedPerS,
  viscosityPaS,
} from './stirring-fields.js';

/**
 * Reynolds number of an impeller.
 *
 *   Re = ρ N D² / μ
 *
 * @param impellerDiameterM D [m]
 * @param speedPerS         N [1/s]
 * @param densityKgPerM3    ρ [kg/m³]
 * @param viscosityPaS      μ [Pa·s]
 * @returns reynolds Re [-]
 * @range all positive, Newtonian
 * @error CALC_OUT_OF_RANGE outside the range
 * @source mccabe-smith-harriott-5 ch. 9
 */
export const impellerReynolds = calculation({
  id: 'stirring.reynolds',
  title: 'Reynolds number of an impeller',
  inputs: z.strictObject({ impellerDiameterM, speedPerS, densityKgPerM3, viscosityPaS }),
  outputs: z.strictObject({ reynolds: reynoldsOutput }),
  formula: String.raw`Re = \frac{\rho N D^2}{\mu}`,
  range: 'D, N, ρ, μ > 0; Newtonian liquid (else the apparent viscosity of stirring.metznerOtto)',
  source: [published('mccabe-smith-harriott-5 ch. 9')],
  compute: ({ impellerDiameterM: d, speedPerS: n, densityKgPerM3: rho, viscosityPaS: mu }, log) => {
    const re = (rho * n * d ** 2) / mu;
    log?.({
      symbol: 'Re',
      formula: 'ρ N D² / μ',
      substituted: `${shown(rho)} × ${shown(n)} × ${shown(d)}² / ${shown(mu)}`,
      value: re,
      unit: '1',
    });
    return succeed({ reynolds: re });
  },
});
