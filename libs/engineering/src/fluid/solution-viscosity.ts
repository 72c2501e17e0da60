import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { findAqueousSolution } from './aqueous-solution-data.js';
import { massFractionField, soluteField, temperatureField } from './fluid-fields.js';
import { coverageNote, laliberteViscosity, laliberteWaterViscosity, solutionCoverage } from './laliberte.js';

/**
 * Dynamic viscosity of an aqueous solution of one solute (Laliberté).
 *
 *   ln μ = (1 − w) ln μ_w + w ln μ_s,  μ_s = exp((v1 w^v2 + v3)/(v4 t + 1)) / (v5 w^v6 + 1)
 *
 * @param solute       CAS number or common name
 * @param massFraction w [-]
 * @param temperatureK T [K]
 * @returns viscosityPaS μ [Pa·s]
 * @range the data of the solute; outside the data of this fit the step says "extrapolated"
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_OUT_OF_RANGE
 * @source laliberte-2009
 */
export const solutionViscosity = calculation({
  id: 'fluid.solutionViscosity',
  title: 'Viscosity of an aqueous solution',
  inputs: z.strictObject({
    solute: soluteField,
    massFraction: massFractionField,
    temperatureK: temperatureField('Temperature'),
  }),
  outputs: z.strictObject({
    viscosityPaS: quantity({ unit: 'Pa.s', symbol: 'μ', description: 'Dynamic viscosity of the solution' }),
  }),
  formula: String.raw`\mu = \mu_w^{1-w}\left(\frac{e^{(v_1 w^{v_2} + v_3)/(v_4 t + 1)}}{v_5 w^{v_6} + 1}\right)^{w}`,
  range: 'temperatures and mass fractions for which the solute has data',
  source: [published('laliberte-2009'), published('laliberte-2007')],
  compute: ({ solute, massFraction, temperatureK }, log) => {
    const solution = findAqueousSolution(solute);
    if (!solution.ok) return solution;
    const state = { massFraction, temperatureK };
    const coverage = solutionCoverage(solution.value, 'viscosity', state);
    if (!coverage.ok) return coverage;
    const viscosityPaS = laliberteViscosity(solution.value, state);
    log?.({
      symbol: 'μ',
      formula: 'μ_w^(1 − w) (exp((v1 w^v2 + v3)/(v4 t + 1)) / (v5 w^v6 + 1))^w, in mPa·s',
      substituted: `w = ${shown(massFraction)}, t = ${shown(temperatureK - 273.15)} °C, μ_w = ${shown(laliberteWaterViscosity(temperatureK - 273.15))}, v1 to v6 = ${solution.value.viscosity.coefficients.map(shown).join(', ')}`,
      value: viscosityPaS,
      unit: 'Pa.s',
      note: coverageNote(solution.value, 'viscosity', coverage.value),
    });
    return succeed({ viscosityPaS });
  },
});
