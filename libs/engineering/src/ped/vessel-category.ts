import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { classifyVessel, disputedAdvice, pedCategories } from './annex-ii-vessels.js';

export const volumeField = quantity(
  { unit: 'L', symbol: 'V', description: 'Volume of the chamber' },
  z.number().positive().max(1e9),
);

export const maxPressureField = quantity(
  { unit: 'bar', symbol: 'PS', description: 'Maximum allowable pressure, gauge' },
  z.number().min(0).max(1e5),
);

export const vesselClassFields = {
  category: z.enum(pedCategories).meta({ description: 'Category of the vessel; Art4(3): sound practice' }),
  table: quantity({ unit: '1', symbol: 'table', description: 'Table of annex II, 0 where out of scope' }),
  disputed: z.boolean().meta({ description: 'Readings of the table differ here' }),
  advice: z.string().meta({ description: 'What to do in a disputed case; else empty' }),
};

/**
 * Category of a vessel under the Pressure Equipment Directive.
 *
 *   lines of PS, V and PS·V in the table of the fluid's state and group; a point on a line belongs below it
 *
 * @param volumeL             V [L]
 * @param maxPressureBarGauge PS [bar, gauge]
 * @param fluidState          gas or liquid, see ped.fluidState
 * @param fluidGroup          1 or 2, see ped.fluidGroup
 * @returns category, the table, whether readings of it differ here, and then the advice
 * @range vessels that are not fired, not portable extinguishers and not for unstable gases
 * @error CALC_OUT_OF_RANGE for a volume or pressure that is not positive
 * @source 2014/68/EU art. 1(1), art. 4, annex II tables 1 to 4
 */
export const vesselCategory = calculation({
  id: 'ped.vesselCategory',
  title: 'Conformity category of a vessel',
  inputs: z.strictObject({
    volumeL: volumeField,
    maxPressureBarGauge: maxPressureField,
    fluidState: z.enum(['gas', 'liquid']).meta({ description: 'State at the highest allowable temperature' }),
    fluidGroup: z.union([z.literal(1), z.literal(2)]).meta({ description: 'Fluid group' }),
  }),
  outputs: z.strictObject(vesselClassFields),
  formula: String.raw`\text{category} = g_\text{table}(PS, V, PS \cdot V)`,
  range: 'vessels; not fired equipment (table 5), extinguishers, breathing apparatus or unstable gases',
  source: [published('2014/68/EU art. 4 and annex II tables 1 to 4')],
  compute: (point, log) => {
    const { category, table, disputed } = classifyVessel(point);
    const { volumeL, maxPressureBarGauge } = point;
    log?.({
      symbol: 'category',
      formula: table === 0 ? 'PS ≤ 0.5 bar: article 1(1)' : `annex II table ${String(table)}`,
      substituted: `PS = ${shown(maxPressureBarGauge)} bar, V = ${shown(volumeL)} L, PS·V = ${shown(maxPressureBarGauge * volumeL)} bar·L`,
      value: category,
      unit: '1',
      ...(disputed ? { note: `readings of the table differ here: ${disputedAdvice}` } : {}),
    });
    return succeed({ category, table, disputed, advice: disputed ? disputedAdvice : '' });
  },
});
