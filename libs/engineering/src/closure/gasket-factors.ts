import { z } from 'zod';
import { fail, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import table from './gasket-factors.json' with { type: 'json' };

/** Kinds of gasket that the table lists, and those that it is asked for and does not. */
export const gasketKinds: readonly string[] = [...table.rows.map(({ gasket }) => gasket), ...table.unlisted];

/**
 * Gasket factor m and seating stress y of a kind of gasket.
 *
 * @param gasket kind, in the words of the table
 * @returns gasketFactor m [-], seatingStressPa y [Pa]
 * @range the rows of the table
 * @error CALC_MISSING_PROPERTY for PTFE, which the table does not list; CALC_INVALID_INPUT for another word
 * @source asme-viii-1 appendix 2, table 2-5.1
 */
export const gasketFactors = calculation({
  id: 'closure.gasketFactors',
  title: 'Factors of a gasket',
  inputs: z.strictObject({ gasket: z.enum(gasketKinds).meta({ description: 'Kind of gasket' }) }),
  outputs: z.strictObject({
    gasketFactor: quantity({ unit: '1', symbol: 'm', description: 'Gasket factor' }),
    seatingStressPa: quantity({ unit: 'Pa', symbol: 'y', description: 'Seating stress' }),
  }),
  formula: String.raw`m, y \text{ from table 2-5.1}`,
  range: 'the kinds that the table lists',
  source: [published('asme-viii-1 appendix 2 table 2-5.1')],
  compute: ({ gasket }, log) => {
    const row = table.rows.find((candidate) => candidate.gasket === gasket);
    if (row === undefined) {
      return fail({
        code: 'CALC_MISSING_PROPERTY',
        message: `gasket: ${gasket} given; the table lists no factors for it: take those of its maker (EN 13555)`,
        field: 'gasket',
        given: gasket,
        allowed: 'a kind that table 2-5.1 lists',
      });
    }
    const { gasketFactor, seatingStressPa } = row;
    log?.({ symbol: 'm', formula: 'table 2-5.1', substituted: gasket, value: gasketFactor, unit: '1' });
    log?.({ symbol: 'y', formula: 'table 2-5.1', substituted: gasket, value: seatingStressPa, unit: 'Pa' });
    return succeed({ gasketFactor, seatingStressPa });
  },
});
