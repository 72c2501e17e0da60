import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { findAqueousSolution } from './aqueous-solution-data.js';
import { massFractionField, soluteField, temperatureField } from './fluid-fields.js';
import { coverageNote, laliberteDensity, laliberteWaterDensity, solutionCoverage } from './laliberte.js';

/**
 * Density of an aqueous solution of one solute (Laliberté).
 *
 *   1/ρ = (1 − w)/ρ_w + w/ρ_app,  ρ_app = (c0 w + c1) exp(10⁻⁶ (t + c4)²) / (w + c2 + c3 t)
 *
 * @param solute       CAS number or common name
 * @param massFraction w [-]
 * @param temperatureK T [K]
 * @returns densityKgPerM3 ρ [kg/m³]
 * @range the data of the solute; outside the data of this fit the step says "extrapolated"
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_OUT_OF_RANGE
 * @source laliberte-2009
 */
export const solutionDensity = calculation({
  id: 'fluid.solutionDensity',
  title: 'Density of an aqueous solution',
  inputs: z.strictObject({
    solute: soluteField,
    massFraction: massFractionField,
    temperatureK: temperatureField('Temperature'),
  }),
  outputs: z.strictObject({
    densityKgPerM3: quantity({ unit: 'kg/m3', symbol: 'ρ', description: 'Density of the solution' }),
  }),
  formula: String.raw`\frac{1}{\rho} = \frac{1-w}{\rho_w} + \frac{w\,(w + c_2 + c_3 t)}{(c_0 w + c_1)\,e^{10^{-6}(t + c_4)^2}}`,
  range: 'temperatures and mass fractions for which the solute has data',
  source: [published('laliberte-2009'), published('laliberte-cooper-2004')],
  compute: ({ solute, massFraction, temperatureK }, log) => {
    const solution = findAqueousSolution(solute);
    if (!solution.ok) return solution;
    const state = { massFraction, temperatureK };
    const coverage = solutionCoverage(solution.value, 'density', state);
    if (!coverage.ok) return coverage;
    const densityKgPerM3 = laliberteDensity(solution.value, state);
    log?.({
      symbol: 'ρ',
      formula: '1 / ((1 − w)/ρ_w + w (w + c2 + c3 t) / ((c0 w + c1) exp(10⁻⁶ (t + c4)²)))',
      substituted: `w = ${shown(massFraction)}, t = ${shown(temperatureK - 273.15)} °C, ρ_w = ${shown(laliberteWaterDensity(temperatureK - 273.15))}, c0 to c4 = ${solution.value.density.coefficients.map(shown).join(', ')}`,
      value: densityKgPerM3,
      unit: 'kg/m3',
      note: coverageNote(solution.value, 'density', coverage.value),
    });
    return succeed({ densityKgPerM3 });
  },
});
