import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { findFluid } from './fluid-data.js';
import { substanceField, temperatureField } from './fluid-fields.js';
import { fluidProperty } from './fluid-property.js';

/**
 * Dynamic viscosity of a liquid, from the tabulated correlation of the substance.
 *
 * @param substance    CAS number or common name
 * @param temperatureK T [K]
 * @returns viscosityPaS μ [Pa.s]
 * @range within the range of the row
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source perry-8 table 2-313 (the row used is named in the step)
 */
export const liquidViscosity = calculation({
  id: 'fluid.liquidViscosity',
  title: 'Dynamic viscosity of a liquid',
  inputs: z.strictObject({ substance: substanceField, temperatureK: temperatureField('Temperature') }),
  outputs: z.strictObject({
    viscosityPaS: quantity({
      unit: 'Pa.s',
      symbol: 'μ',
      description: 'Dynamic viscosity of the saturated liquid',
    }),
  }),
  formula: String.raw`\ln\mu = C_1 + C_2/T + C_3\ln T + C_4 T^{C_5}`,
  range: 'within the range of the row',
  source: [published('perry-8 table 2-313')],
  compute: ({ substance, temperatureK }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    const value = fluidProperty(fluid.value, 'liquidViscosity', { temperatureK, log });
    return value.ok ? succeed({ viscosityPaS: value.value }) : value;
  },
});
