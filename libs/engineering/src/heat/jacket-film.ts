import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';
import { type JacketFlow, steinSchmidtNusselt } from './jacket-stein-schmidt.js';

interface LehrerResult {
  readonly reynolds: number;
  readonly nusselt: number;
  readonly diameterM: number;
}

/** Lehrer without free convection and wall viscosity: velocity √(v_s v_inlet), diameter √(8/3) times the gap. */
const lehrer = (flow: JacketFlow, prandtl: number): LehrerResult => {
  const gap = (flow.jacketInnerDiameterM - flow.vesselOuterDiameterM) / 2;
  const volumeFlow = flow.mediumFlowKgPerS / flow.densityKgPerM3;
  const inletVelocity = volumeFlow / ((Math.PI / 4) * flow.inletDiameterM ** 2);
  const gapVelocity = volumeFlow / (flow.jacketHeightM * gap);
  const diameterM = Math.sqrt(8 / 3) * gap;
  const reynolds =
    (Math.sqrt(gapVelocity * inletVelocity) * diameterM * flow.densityKgPerM3) / flow.viscosityPaS;
  const nusselt = (0.03 * reynolds ** 0.75 * prandtl) / (1 + (1.74 * (prandtl - 1)) / reynolds ** 0.125);
  return { reynolds, nusselt, diameterM };
};

/** Lehrer's form turns over below this Reynolds number. */
const minReynolds = 100;

/**
 * Film coefficient in a jacket with nozzles, as a band: two published correlations differ by about a factor of two.
 *
 *   Lehrer:          Nu = 0.03 Re^0.75 Pr / (1 + 1.74 (Pr − 1)/Re^0.125) (μ/μ_w)^0.14
 *   Stein–Schmidt:   Nu = (Nu_A³ + Nu_B³ + Nu_C³ + Nu_D³)^(1/3) (μ/μ_w)^0.14
 *
 * Free convection is left out. A measured value replaces the band.
 *
 * @param vesselOuterDiameterM, jacketInnerDiameterM, jacketHeightM, inletDiameterM [m]
 * @param mediumFlowKgPerS [kg/s]; properties of the medium at its mean temperature; wallViscosityPaS optional
 * @param inlet `tangential` or `radial`
 * @returns lowerCoefficientWPerM2K, upperCoefficientWPerM2K, lehrerCoefficientWPerM2K, steinSchmidtCoefficientWPerM2K
 * @range liquid without change of phase, Pr ≥ 0.6, Re (Lehrer) ≥ 100, smooth walls
 * @error CALC_OUT_OF_RANGE outside the range
 * @source vdi-heat-atlas part N (jackets); lehrer-1970; stein-schmidt-1993
 */
export const jacketFilm = calculation({
  id: 'heat.jacketFilm',
  title: 'Film coefficient in a jacket with nozzles, as a band',
  inputs: z.strictObject({
    vesselOuterDiameterM: heatFields.positive('m', 'D', 'Outer diameter of the vessel in the jacket'),
    jacketInnerDiameterM: heatFields.positive('m', 'D_j', 'Inner diameter of the jacket'),
    jacketHeightM: heatFields.positive('m', 'H', 'Height of the jacket'),
    inletDiameterM: heatFields.positive('m', 'd', 'Inner diameter of the inlet nozzle'),
    mediumFlowKgPerS: heatFields.mediumFlowKgPerS,
    densityKgPerM3: heatFields.positive('kg/m3', 'ρ', 'Density of the medium'),
    heatCapacityJPerKgK: heatFields.positive('J/(kg.K)', 'c', 'Heat capacity of the medium'),
    conductivityWPerMK: heatFields.positive('W/(m.K)', 'k', 'Thermal conductivity of the medium'),
    viscosityPaS: heatFields.positive('Pa.s', 'μ', 'Dynamic viscosity of the medium'),
    wallViscosityPaS: heatFields.positive('Pa.s', 'μ_w', 'Dynamic viscosity at the wall').optional(),
    inlet: z.enum(['tangential', 'radial']).meta({ description: 'How the inlet nozzle stands' }),
  }),
  outputs: z.strictObject({
    lowerCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'h_min', description: 'Lower end' }),
    upperCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'h_max', description: 'Upper end' }),
    lehrerCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'h_L', description: 'By Lehrer' }),
    steinSchmidtCoefficientWPerM2K: quantity({
      unit: 'W/(m2.K)',
      symbol: 'h_S',
      description: 'By Stein and Schmidt',
    }),
  }),
  formula: String.raw`\mathrm{Nu}_L = \frac{0.03\,\mathrm{Re}^{0.75}\mathrm{Pr}}{1 + 1.74(\mathrm{Pr}-1)/\mathrm{Re}^{0.125}},\quad \mathrm{Nu}_S = \left(\mathrm{Nu}_A^3+\mathrm{Nu}_B^3+\mathrm{Nu}_C^3+\mathrm{Nu}_D^3\right)^{1/3}`,
  range: 'liquid without change of phase, Pr ≥ 0.6, Re ≥ 100, free convection left out',
  source: [published('vdi-heat-atlas'), published('lehrer-1970'), published('stein-schmidt-1993')],
  compute: (inputs, log) => {
    const { viscosityPaS: mu, wallViscosityPaS = mu, conductivityWPerMK: k } = inputs;
    if (inputs.jacketInnerDiameterM <= inputs.vesselOuterDiameterM) {
      return outOfRange({
        field: 'jacketInnerDiameterM',
        given: inputs.jacketInnerDiameterM,
        unit: 'm',
        allowed: `more than vesselOuterDiameterM (${shown(inputs.vesselOuterDiameterM)} m)`,
      });
    }
    const prandtl = (inputs.heatCapacityJPerKgK * mu) / k;
    if (prandtl < 0.6) {
      return outOfRange({
        field: 'conductivityWPerMK',
        given: k,
        unit: 'W/(m·K)',
        allowed: 'a liquid with a Prandtl number of at least 0.6',
      });
    }
    const first = lehrer(inputs, prandtl);
    if (first.reynolds < minReynolds) {
      return outOfRange({
        field: 'mediumFlowKgPerS',
        given: inputs.mediumFlowKgPerS,
        unit: 'kg/s',
        allowed: `at least ${shown((inputs.mediumFlowKgPerS * minReynolds) / first.reynolds)} kg/s, where Re reaches ${String(minReynolds)}; raise the flow or give a measured coefficient`,
      });
    }
    const wall = (mu / wallViscosityPaS) ** 0.14;
    const lehrerCoefficientWPerM2K = (first.nusselt * wall * k) / first.diameterM;
    const gap = inputs.jacketInnerDiameterM - inputs.vesselOuterDiameterM;
    const second = steinSchmidtNusselt(inputs, prandtl);
    const steinSchmidtCoefficientWPerM2K = (second * wall * k) / gap;
    log?.({
      symbol: 'h_L',
      formula: '(k/d_g) 0.03 Re^0.75 Pr/(1 + 1.74 (Pr − 1)/Re^0.125) (μ/μ_w)^0.14, d_g = √(8/3) δ',
      substituted: `(${shown(k)}/${shown(first.diameterM)}) × ${shown(first.nusselt)} × ${shown(wall)}, Re = ${shown(first.reynolds)}, Pr = ${shown(prandtl)}`,
      value: lehrerCoefficientWPerM2K,
      unit: 'W/(m2.K)',
      note: 'Lehrer',
    });
    log?.({
      symbol: 'h_S',
      formula: '(k/(2 δ)) (Nu_A³ + Nu_B³ + Nu_C³ + Nu_D³)^(1/3) (μ/μ_w)^0.14',
      substituted: `(${shown(k)}/${shown(gap)}) × ${shown(second)} × ${shown(wall)}`,
      value: steinSchmidtCoefficientWPerM2K,
      unit: 'W/(m2.K)',
      note: 'Stein and Schmidt; the correlations differ by about a factor of two',
    });
    return succeed({
      lowerCoefficientWPerM2K: Math.min(lehrerCoefficientWPerM2K, steinSchmidtCoefficientWPerM2K),
      upperCoefficientWPerM2K: Math.max(lehrerCoefficientWPerM2K, steinSchmidtCoefficientWPerM2K),
      lehrerCoefficientWPerM2K,
      steinSchmidtCoefficientWPerM2K,
    });
  },
});
