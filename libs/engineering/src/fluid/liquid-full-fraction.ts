import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { findFluid } from './fluid-data.js';
import { substanceField } from './fluid-fields.js';
import { fluidProperty } from './fluid-property.js';

/**
 * Fill fraction at the filling temperature with which the vessel is just full of liquid at the working temperature.
 *
 *   φ = ρ(T_work) / ρ(T_fill)
 *
 * Vapour and the expansion of the vessel are neglected. The vessel must be filled to less than φ.
 *
 * @param substance        CAS number or common name
 * @param fillTemperatureK T_fill [K]
 * @param workTemperatureK T_work ≥ T_fill [K]
 * @returns fillFraction φ [-]
 * @range both temperatures within the range of the liquid density
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source vdi-heat-atlas part D3 (densities)
 */
export const liquidFullFraction = calculation({
  id: 'fluid.liquidFullFraction',
  title: 'Fill fraction that becomes liquid-full',
  inputs: z.strictObject({
    substance: substanceField,
    fillTemperatureK: quantity(
      { unit: 'K', symbol: 'T_fill', description: 'Temperature at filling' },
      z.number().positive(),
    ),
    workTemperatureK: quantity(
      { unit: 'K', symbol: 'T_work', description: 'Highest temperature' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    fillFraction: quantity({
      unit: '1',
      symbol: 'φ',
      description: 'Fill fraction at filling that is full at the highest temperature',
    }),
  }),
  formula: String.raw`\varphi = \frac{\rho(T_\mathrm{work})}{\rho(T_\mathrm{fill})}`,
  range: 'T_fill ≤ T_work, both within the range of the liquid density',
  source: [published('vdi-heat-atlas part D3'), published('perry-8 table 2-32')],
  compute: ({ substance, fillTemperatureK, workTemperatureK }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    if (workTemperatureK < fillTemperatureK) {
      return outOfRange({
        field: 'workTemperatureK',
        given: workTemperatureK,
        unit: 'K',
        allowed: `at least fillTemperatureK (${shown(fillTemperatureK)} K)`,
      });
    }
    const cold = fluidProperty(fluid.value, 'liquidDensity', { temperatureK: fillTemperatureK, log });
    if (!cold.ok) return relabelled(cold.error, { temperatureK: 'fillTemperatureK' });
    const hot = fluidProperty(fluid.value, 'liquidDensity', { temperatureK: workTemperatureK, log });
    if (!hot.ok) return relabelled(hot.error, { temperatureK: 'workTemperatureK' });
    const fillFraction = hot.value / cold.value;
    log?.({
      symbol: 'φ',
      formula: 'ρ(T_work) / ρ(T_fill)',
      substituted: `${shown(hot.value)} / ${shown(cold.value)}`,
      value: fillFraction,
      unit: '1',
      note: 'fill to less than this: vapour space and vessel expansion are not in it',
    });
    return succeed({ fillFraction });
  },
});
