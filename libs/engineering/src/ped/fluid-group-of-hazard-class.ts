import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import rows from './hazard-classes.json' with { type: 'json' };

const hazardClasses = z
  .array(z.strictObject({ pattern: z.string(), fluidGroup: z.union([z.literal(1), z.literal(2)]) }))
  .parse(rows)
  .map(({ pattern, fluidGroup }) => ({ pattern: new RegExp(`^(${pattern})$`), fluidGroup }));

/** `Acute Tox. 3 (inhalation)` and `acute tox 3 inhalation` are one class. */
const normalised = (hazardClass: string): string =>
  hazardClass
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

/**
 * Fluid group of a hazard class of Regulation (EC) 1272/2008.
 * @error CALC_MISSING_PROPERTY where the class alone does not decide; CALC_INVALID_INPUT for an unknown class
 */
export const fluidGroupOfClass = (hazardClass: string): Outcome<1 | 2> => {
  const name = normalised(hazardClass);
  const row = hazardClasses.find(({ pattern }) => pattern.test(name));
  if (row !== undefined) return succeed(row.fluidGroup);
  if (/^flam liq 3/.test(name)) {
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `hazardClass: ${hazardClass} given; say whether TS lies above the flash point: Flam. Liq. 3 with TS above flash point, or with TS below flash point`,
      field: 'hazardClass',
      given: hazardClass,
    });
  }
  if (/^acute tox 3$/.test(name)) {
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `hazardClass: ${hazardClass} given; say the path: oral, dermal or inhalation`,
      field: 'hazardClass',
      given: hazardClass,
    });
  }
  return fail({
    code: 'CALC_INVALID_INPUT',
    message: `hazardClass: ${hazardClass} given; allowed are the abbreviations of Regulation (EC) 1272/2008 with category, for instance Flam. Gas 1, Acute Tox. 3 inhalation, none`,
    field: 'hazardClass',
    given: hazardClass,
  });
};

/**
 * Fluid group that a hazard class leads to. Acute toxicity of category 3 leads to group 1 by inhalation only.
 *
 * @param hazardClass abbreviation with category, for instance `Flam. Liq. 2`, `Acute Tox. 3 inhalation`
 * @returns fluidGroup 1 or 2
 * @range classes of Regulation (EC) 1272/2008
 * @error CALC_MISSING_PROPERTY, CALC_INVALID_INPUT
 * @source 2014/68/EU art. 13(1)(a)
 */
export const fluidGroupOfHazardClass = calculation({
  id: 'ped.fluidGroupOfHazardClass',
  title: 'Fluid group of a hazard class',
  inputs: z.strictObject({
    hazardClass: z.string().min(1).meta({ description: 'Hazard class and category' }),
  }),
  outputs: z.strictObject({
    fluidGroup: quantity({ unit: '1', symbol: 'group', description: 'Fluid group, 1 or 2' }),
  }),
  formula: String.raw`\text{group} = 1 \iff \text{class in art. 13(1)(a)}`,
  range: 'classes of Regulation (EC) 1272/2008',
  source: [published('2014/68/EU art. 13(1)(a)')],
  compute: ({ hazardClass }, log) => {
    const group = fluidGroupOfClass(hazardClass);
    if (!group.ok) return group;
    log?.({
      symbol: 'group',
      formula: 'list of article 13(1)(a)',
      substituted: hazardClass,
      value: group.value,
      unit: '1',
    });
    return succeed({ fluidGroup: group.value });
  },
});
