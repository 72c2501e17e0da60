import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/** Below this the flow in a coil may be laminar or in transition. */
const minReynolds = 10_000;

/**
 * Film coefficient inside the tube of a helical coil, turbulent flow.
 *
 *   h = (k/d) (1 + 3.5 d/d_c) 0.023 Re^0.8 Pr^0.4
 *
 * @param tubeInnerDiameterM  d [m]
 * @param coilDiameterM       d_c, of the helix [m]
 * @param massFluxKgPerM2S    G [kg/(m²·s)]
 * @param viscosityPaS        μ [Pa·s]
 * @param heatCapacityJPerKgK c_p [J/(kg·K)]
 * @param conductivityWPerMK  k [W/(m·K)]
 * @returns coefficientWPerM2K h [W/(m²·K)]
 * @range Re = G d/μ ≥ 10 000, d < d_c
 * @error CALC_OUT_OF_RANGE outside the range
 * @source coulson-richardson-1 eq. 9.202, 9.203
 */
export const coilInsideCoefficient = calculation({
  id: 'heat.coilInsideCoefficient',
  title: 'Film coefficient inside a coil',
  inputs: z.strictObject({
    tubeInnerDiameterM: heatFields.positive('m', 'd', 'Inner diameter of the tube'),
    coilDiameterM: heatFields.positive('m', 'd_c', 'Diameter of the helix'),
    massFluxKgPerM2S: heatFields.positive('kg/(m2.s)', 'G', 'Mass flux in the tube'),
    viscosityPaS: heatFields.positive('Pa.s', 'μ', 'Dynamic viscosity of the medium'),
    heatCapacityJPerKgK: heatFields.positive('J/(kg.K)', 'c_p', 'Heat capacity of the medium'),
    conductivityWPerMK: heatFields.positive('W/(m.K)', 'k', 'Thermal conductivity of the medium'),
  }),
  outputs: z.strictObject({
    coefficientWPerM2K: quantity({
      unit: 'W/(m2.K)',
      symbol: 'h_i',
      description: 'Film coefficient inside the tube',
    }),
  }),
  formula: String.raw`h = \frac{k}{d}\left(1 + 3.5\,\frac{d}{d_c}\right) 0.023\,\mathrm{Re}^{0.8}\,\mathrm{Pr}^{0.4}`,
  range: 'turbulent, Re ≥ 10 000, d < d_c',
  source: [published('coulson-richardson-1 eq. 9.202, 9.203')],
  compute: (inputs, log) => {
    const {
      tubeInnerDiameterM: d,
      coilDiameterM,
      massFluxKgPerM2S,
      viscosityPaS,
      conductivityWPerMK: k,
    } = inputs;
    if (d >= coilDiameterM) {
      return outOfRange({
        field: 'tubeInnerDiameterM',
        given: d,
        unit: 'm',
        allowed: `less than coilDiameterM (${shown(coilDiameterM)} m)`,
      });
    }
    const reynolds = (massFluxKgPerM2S * d) / viscosityPaS;
    if (reynolds < minReynolds) {
      return outOfRange({
        field: 'massFluxKgPerM2S',
        given: massFluxKgPerM2S,
        unit: 'kg/(m²·s)',
        allowed: `at least ${shown((minReynolds * viscosityPaS) / d)} kg/(m²·s), where Re reaches ${String(minReynolds)}; raise the flow or give a measured coefficient`,
      });
    }
    const prandtl = (inputs.heatCapacityJPerKgK * viscosityPaS) / k;
    const coefficientWPerM2K =
      (k / d) * (1 + (3.5 * d) / coilDiameterM) * 0.023 * reynolds ** 0.8 * prandtl ** 0.4;
    log?.({
      symbol: 'Re',
      formula: 'G d/μ',
      substituted: `${shown(massFluxKgPerM2S)} × ${shown(d)} / ${shown(viscosityPaS)}`,
      value: reynolds,
      unit: '1',
    });
    log?.({
      symbol: 'h_i',
      formula: '(k/d) (1 + 3.5 d/d_c) 0.023 Re^0.8 Pr^0.4',
      substituted: `(${shown(k)}/${shown(d)}) × (1 + 3.5 × ${shown(d)}/${shown(coilDiameterM)}) × 0.023 × ${shown(reynolds)}^0.8 × ${shown(prandtl)}^0.4`,
      value: coefficientWPerM2K,
      unit: 'W/(m2.K)',
    });
    return succeed({ coefficientWPerM2K });
  },
});
