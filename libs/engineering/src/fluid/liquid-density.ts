import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { findFluid } from './fluid-data.js';
import { substanceField, temperatureField } from './fluid-fields.js';
import { fluidProperty } from './fluid-property.js';

/**
 * Density of a saturated liquid, from the tabulated correlation of the substance.
 *
 * @param substance    CAS number or common name
 * @param temperatureK T [K]
 * @returns densityKgPerM3 ρ [kg/m3]
 * @range from the melting point to the critical point, as far as a row reaches; saturated liquid, compression neglected; up to 3 % off in the last 3 % below the critical temperature
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source vdi-heat-atlas part D3; perry-8 table 2-32 (the row used is named in the step)
 */
export const liquidDensity = calculation({
  id: 'fluid.liquidDensity',
  title: 'Density of a saturated liquid',
  inputs: z.strictObject({ substance: substanceField, temperatureK: temperatureField('Temperature') }),
  outputs: z.strictObject({
    densityKgPerM3: quantity({ unit: 'kg/m3', symbol: 'ρ', description: 'Density of the saturated liquid' }),
  }),
  formula: String.raw`\rho(T)\ \text{by the PPDS or DIPPR 105 form of the row}`,
  range:
    'from the melting point to the critical point, as far as a row reaches; saturated liquid, compression neglected; up to 3 % off in the last 3 % below the critical temperature',
  source: [published('vdi-heat-atlas part D3'), published('perry-8 table 2-32')],
  compute: ({ substance, temperatureK }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    const value = fluidProperty(fluid.value, 'liquidDensity', { temperatureK, log });
    return value.ok ? succeed({ densityKgPerM3: value.value }) : value;
  },
});
