import { z } from 'zod';
import { fail, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';
import { shown } from '../shown.js';
import { impellerConstantsOf, impellerTypes } from './impeller-constants.js';

const constant = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: '1', symbol, description });

const impeller = z.enum(impellerTypes).meta({ description: 'Type of impeller' });

/**
 * Constant of Metzner and Otto of an impeller type, with the band of published values.
 *
 * @param impeller type
 * @returns metznerOttoConstant k_s, lowConstant, highConstant [-]
 * @range the types of the table
 * @error CALC_INVALID_INPUT for another type
 * @source metzner-otto-1957; impeller-constants (common practice)
 */
export const metznerOttoConstant = calculation({
  id: 'stirring.metznerOttoConstant',
  title: 'Shear rate constant of an impeller type',
  inputs: z.strictObject({ impeller }),
  outputs: z.strictObject({
    metznerOttoConstant: constant('k_s', 'Shear rate by speed'),
    lowConstant: constant('k_s,low', 'Low end of published values'),
    highConstant: constant('k_s,high', 'High end of published values'),
  }),
  formula: String.raw`\dot\gamma = k_s N\;\text{(table by impeller type)}`,
  range: 'the impeller types of the table; laminar flow and the lower transition',
  source: [published('metzner-otto-1957'), commonPractice('stirring-practice shear rate constants')],
  compute: (inputs, log) => {
    const { value, low, high, source, basis } = impellerConstantsOf(inputs.impeller).metznerOtto;
    log?.({
      symbol: 'k_s',
      formula: 'table by impeller type',
      substituted: `${inputs.impeller}: ${shown(low)} to ${shown(high)}`,
      value,
      unit: '1',
      note: `${source} (${basis})`,
    });
    return succeed({ metznerOttoConstant: value, lowConstant: low, highConstant: high });
  },
});

/**
 * Constant S of Zwietering of an impeller type, as a range over clearance and diameter ratio.
 *
 * @param impeller type
 * @returns lowConstant, highConstant S [-]; the high end is the careful one
 * @range turbines, propellers, hydrofoils
 * @error CALC_MISSING_PROPERTY for types for which no constant is known
 * @source zwietering-1958 (values by type from memory, unverified)
 */
export const zwieteringConstant = calculation({
  id: 'stirring.zwieteringConstant',
  title: 'Suspension constant of an impeller type',
  inputs: z.strictObject({ impeller }),
  outputs: z.strictObject({
    lowConstant: constant('S_low', 'Low end over clearance and diameter ratio'),
    highConstant: constant('S_high', 'High end over clearance and diameter ratio'),
  }),
  formula: String.raw`S_{low} \le S \le S_{high}\;\text{(table by impeller type)}`,
  range: 'turbines, propellers, hydrofoils in baffled vessels',
  source: [fromMemory('zwietering-1958 constants by impeller type')],
  compute: (inputs, log) => {
    const { zwietering } = impellerConstantsOf(inputs.impeller);
    if (zwietering === null) {
      return fail({
        code: 'CALC_MISSING_PROPERTY',
        message: `impeller: no suspension constant is known for ${inputs.impeller}; take a turbine, or measure`,
        field: 'impeller',
        given: inputs.impeller,
      });
    }
    log?.({
      symbol: 'S_high',
      formula: 'table by impeller type',
      substituted: `${inputs.impeller}: ${shown(zwietering.low)} to ${shown(zwietering.high)}`,
      value: zwietering.high,
      unit: '1',
      note: `${zwietering.source} (${zwietering.basis})`,
    });
    return succeed({ lowConstant: zwietering.low, highConstant: zwietering.high });
  },
});
