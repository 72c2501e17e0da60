import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { findFluid } from './fluid-data.js';
import { substanceField, temperatureField } from './fluid-fields.js';
import { fluidProperty } from './fluid-property.js';

/**
 * Heat capacity of a liquid, from the tabulated correlation of the substance.
 *
 * @param substance    CAS number or common name
 * @param temperatureK T [K]
 * @returns heatCapacityJPerKgK c_p [J/(kg.K)]
 * @range within the range of the row, which often ends near the boiling point
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source perry-8 table 2-153 (the row used is named in the step)
 */
export const liquidHeatCapacity = calculation({
  id: 'fluid.liquidHeatCapacity',
  title: 'Heat capacity of a liquid',
  inputs: z.strictObject({ substance: substanceField, temperatureK: temperatureField('Temperature') }),
  outputs: z.strictObject({
    heatCapacityJPerKgK: quantity({
      unit: 'J/(kg.K)',
      symbol: 'c_p',
      description: 'Isobaric heat capacity of the liquid',
    }),
  }),
  formula: String.raw`c_p(T)\ \text{by the DIPPR 100 or 114 form of the row}`,
  range: 'within the range of the row, which often ends near the boiling point',
  source: [published('perry-8 table 2-153')],
  compute: ({ substance, temperatureK }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    const value = fluidProperty(fluid.value, 'liquidHeatCapacity', { temperatureK, log });
    return value.ok ? succeed({ heatCapacityJPerKgK: value.value }) : value;
  },
});
