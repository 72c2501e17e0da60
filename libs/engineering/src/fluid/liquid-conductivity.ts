import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { findFluid } from './fluid-data.js';
import { substanceField, temperatureField } from './fluid-fields.js';
import { fluidProperty } from './fluid-property.js';

/**
 * Thermal conductivity of a liquid, from the tabulated correlation of the substance.
 *
 * @param substance    CAS number or common name
 * @param temperatureK T [K]
 * @returns conductivityWPerMK λ [W/(m.K)]
 * @range within the range of the row
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source vdi-heat-atlas part D3 (the row used is named in the step)
 */
export const liquidConductivity = calculation({
  id: 'fluid.liquidConductivity',
  title: 'Thermal conductivity of a liquid',
  inputs: z.strictObject({ substance: substanceField, temperatureK: temperatureField('Temperature') }),
  outputs: z.strictObject({
    conductivityWPerMK: quantity({
      unit: 'W/(m.K)',
      symbol: 'λ',
      description: 'Thermal conductivity of the saturated liquid',
    }),
  }),
  formula: String.raw`\lambda = A + B T + C T^2 + D T^3 + E T^4`,
  range: 'within the range of the row',
  source: [published('vdi-heat-atlas part D3')],
  compute: ({ substance, temperatureK }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    const value = fluidProperty(fluid.value, 'liquidConductivity', { temperatureK, log });
    return value.ok ? succeed({ conductivityWPerMK: value.value }) : value;
  },
});
