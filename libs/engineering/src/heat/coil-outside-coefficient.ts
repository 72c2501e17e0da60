import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

const reynoldsRange = { min: 300, max: 1_000_000 };

/**
 * Film coefficient outside a helical coil in a stirred vessel.
 *
 *   h D_v/k = 0.87 Re^0.62 Pr^(1/3) (μ/μ_w)^0.14,  Re = ρ N D²/μ
 *
 * @param vesselDiameterM     D_v [m]
 * @param impellerDiameterM   D [m]
 * @param speedPerS           N [1/s]
 * @param densityKgPerM3      ρ [kg/m³]
 * @param viscosityPaS        μ in the bulk [Pa·s]
 * @param wallViscosityPaS    μ_w at the coil [Pa·s]
 * @param heatCapacityJPerKgK c_p [J/(kg·K)]
 * @param conductivityWPerMK  k [W/(m·K)]
 * @returns coefficientWPerM2K h [W/(m²·K)]
 * @range 300 ≤ Re ≤ 10⁶, D < D_v
 * @error CALC_OUT_OF_RANGE outside the range
 * @source coulson-richardson-1 eq. 9.204
 */
export const coilOutsideCoefficient = calculation({
  id: 'heat.coilOutsideCoefficient',
  title: 'Film coefficient outside a coil in a stirred vessel',
  inputs: z.strictObject({
    vesselDiameterM: heatFields.positive('m', 'D_v', 'Inner diameter of the vessel'),
    impellerDiameterM: heatFields.positive('m', 'D', 'Diameter of the stirrer'),
    speedPerS: heatFields.positive('1/s', 'N', 'Speed of the stirrer'),
    densityKgPerM3: heatFields.positive('kg/m3', 'ρ', 'Density of the batch'),
    viscosityPaS: heatFields.positive('Pa.s', 'μ', 'Dynamic viscosity of the batch'),
    wallViscosityPaS: heatFields.positive('Pa.s', 'μ_w', 'Dynamic viscosity at the coil'),
    heatCapacityJPerKgK: heatFields.positive('J/(kg.K)', 'c_p', 'Heat capacity of the batch'),
    conductivityWPerMK: heatFields.positive('W/(m.K)', 'k', 'Thermal conductivity of the batch'),
  }),
  outputs: z.strictObject({
    coefficientWPerM2K: quantity({
      unit: 'W/(m2.K)',
      symbol: 'h_o',
      description: 'Film coefficient outside the coil',
    }),
  }),
  formula: String.raw`\frac{h D_v}{k} = 0.87\,\mathrm{Re}^{0.62}\,\mathrm{Pr}^{1/3}\left(\frac{\mu}{\mu_w}\right)^{0.14}`,
  range: '300 ≤ Re ≤ 10⁶, stirrer smaller than the vessel',
  source: [published('coulson-richardson-1 eq. 9.204')],
  compute: (inputs, log) => {
    const {
      vesselDiameterM,
      impellerDiameterM: D,
      speedPerS: N,
      densityKgPerM3: rho,
      viscosityPaS: mu,
    } = inputs;
    if (D >= vesselDiameterM) {
      return outOfRange({
        field: 'impellerDiameterM',
        given: D,
        unit: 'm',
        allowed: `less than vesselDiameterM (${shown(vesselDiameterM)} m)`,
      });
    }
    const reynolds = (rho * N * D * D) / mu;
    if (reynolds < reynoldsRange.min || reynolds > reynoldsRange.max) {
      return outOfRange({
        field: 'speedPerS',
        given: N,
        unit: '1/s',
        allowed: `${shown((reynoldsRange.min * mu) / (rho * D * D))} to ${shown((reynoldsRange.max * mu) / (rho * D * D))} 1/s, where Re is ${String(reynoldsRange.min)} to ${String(reynoldsRange.max)}`,
      });
    }
    const prandtl = (inputs.heatCapacityJPerKgK * mu) / inputs.conductivityWPerMK;
    const nusselt = 0.87 * reynolds ** 0.62 * Math.cbrt(prandtl) * (mu / inputs.wallViscosityPaS) ** 0.14;
    const coefficientWPerM2K = (nusselt * inputs.conductivityWPerMK) / vesselDiameterM;
    log?.({
      symbol: 'Re',
      formula: 'ρ N D²/μ',
      substituted: `${shown(rho)} × ${shown(N)} × ${shown(D)}² / ${shown(mu)}`,
      value: reynolds,
      unit: '1',
    });
    log?.({
      symbol: 'h_o',
      formula: '(k/D_v) 0.87 Re^0.62 Pr^(1/3) (μ/μ_w)^0.14',
      substituted: `(${shown(inputs.conductivityWPerMK)}/${shown(vesselDiameterM)}) × 0.87 × ${shown(reynolds)}^0.62 × ${shown(prandtl)}^(1/3) × (${shown(mu)}/${shown(inputs.wallViscosityPaS)})^0.14`,
      value: coefficientWPerM2K,
      unit: 'W/(m2.K)',
    });
    return succeed({ coefficientWPerM2K });
  },
});
