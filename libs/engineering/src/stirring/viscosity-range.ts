import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { commonPractice } from '../source-reference.js';
import { shown } from '../shown.js';
import { impellerConstantsOf, impellerTypes } from './impeller-constants.js';

/**
 * Viscosities for which an impeller type is usually taken. A recommendation, not a limit of strength or torque.
 *
 * @param impeller type
 * @returns lowerViscosityPaS, upperViscosityPaS [Pa·s]
 * @range the types of the table
 * @error CALC_INVALID_INPUT for another type
 * @source impeller-constants (common practice)
 */
export const viscosityRange = calculation({
  id: 'stirring.viscosityRange',
  title: 'Usual viscosities of an impeller type',
  inputs: z.strictObject({
    impeller: z.enum(impellerTypes).meta({ description: 'Type of impeller' }),
  }),
  outputs: z.strictObject({
    lowerViscosityPaS: quantity({ unit: 'Pa.s', symbol: 'μ_low', description: 'Lower end of usual use' }),
    upperViscosityPaS: quantity({ unit: 'Pa.s', symbol: 'μ_up', description: 'Upper end of usual use' }),
  }),
  formula: String.raw`\mu_{low} \le \mu \le \mu_{up}\;\text{(table by impeller type)}`,
  range: 'the impeller types of the table; a recommendation, no limit',
  source: [commonPractice('stirring-practice usual viscosities by impeller type')],
  compute: ({ impeller }, log) => {
    const { lower, upper, source, basis } = impellerConstantsOf(impeller).viscosityPaS;
    log?.({
      symbol: 'μ_up',
      formula: 'table by impeller type',
      substituted: `${impeller}: ${shown(lower)} to ${shown(upper)} Pa·s`,
      value: upper,
      unit: 'Pa.s',
      note: `${source} (${basis})`,
    });
    return succeed({ lowerViscosityPaS: lower, upperViscosityPaS: upper });
  },
});
