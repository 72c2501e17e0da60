import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { findFluid } from './fluid-data.js';
import { substanceField, temperatureField } from './fluid-fields.js';
import { fluidProperty } from './fluid-property.js';

/**
 * Vapour pressure of a pure liquid, from the tabulated correlation of the substance.
 *
 * @param substance    CAS number or common name
 * @param temperatureK T [K]
 * @returns pressurePaAbs p_v [Pa]
 * @range from the melting point to the critical point, as far as a row reaches
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source poling-5 app. A; mcgarry-1983; perry-8 table 2-8; landolt-boernstein-iv-20 (the row used is named in the step)
 */
export const vapourPressure = calculation({
  id: 'fluid.vapourPressure',
  title: 'Vapour pressure of a pure liquid',
  inputs: z.strictObject({ substance: substanceField, temperatureK: temperatureField('Temperature') }),
  outputs: z.strictObject({
    pressurePaAbs: quantity({ unit: 'Pa', symbol: 'p_v', description: 'Vapour pressure, absolute' }),
  }),
  formula: String.raw`p_v(T)\ \text{by the Wagner, DIPPR 101 or Antoine form of the row}`,
  range: 'from the melting point to the critical point, as far as a row reaches',
  source: [
    published('poling-5 app. A'),
    published('mcgarry-1983'),
    published('perry-8 table 2-8'),
    published('landolt-boernstein-iv-20'),
  ],
  compute: ({ substance, temperatureK }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    const value = fluidProperty(fluid.value, 'vapourPressure', { temperatureK, log });
    return value.ok ? succeed({ pressurePaAbs: value.value }) : value;
  },
});
