import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { fromMemory, published } from '../source-reference.js';
import { highestCategory, pedCategories, type PedCategory } from './annex-ii-vessels.js';
import { conformityOf, notifiedBodyField } from './conformity-modules.js';

const nameField = (description: string): z.ZodString => z.string().min(1).meta({ description });
const categoryField = z.enum(pedCategories).meta({ description: 'Category of the item by itself' });

const equipment = z.strictObject({ name: nameField('What the item is'), category: categoryField });

const accessory = z.strictObject({
  name: nameField('What the accessory is'),
  madeFor: z
    .string()
    .min(1)
    .optional()
    .meta({ description: 'Name of the one item that it was made for; absent: of general use' }),
});

type Inputs = z.output<typeof inputs>;

const inputs = z.strictObject({
  equipment: z.array(equipment).min(1).max(200),
  safetyAccessories: z.array(accessory).max(200).default([]),
});

interface AccessoryClass {
  readonly name: string;
  readonly category: PedCategory;
  readonly reason: string;
}

const classOf = (
  { name: own, madeFor }: Inputs['safetyAccessories'][number],
  items: Inputs['equipment'],
): AccessoryClass | undefined => {
  if (madeFor === undefined) {
    return { name: own, category: 'IV', reason: 'safety accessory of general use: annex II point 2' };
  }
  const item = items.find((candidate) => candidate.name === madeFor);
  return item === undefined
    ? undefined
    : {
        name: own,
        category: item.category,
        reason: `made for ${item.name}: the category of what it protects, annex II point 2`,
      };
};

/**
 * Category that decides the assessment of an assembly: the highest of its pressure equipment, safety accessories left out;
 * and the category of each safety accessory, IV unless it was made for one item.
 *
 * @param equipment         vessels, jackets, piping and pressure accessories with their categories
 * @param safetyAccessories discs, valves, limiters; `madeFor` names the item that one was made for
 * @returns category, decidedBy, modules, notifiedBody, ceMarking; accessories with category and reason; statement
 * @range items that one manufacturer assembles to a whole; the directive names no category of an assembly as such
 * @error CALC_INVALID_INPUT where an accessory is made for an item that is not in the list
 * @source 2014/68/EU art. 2(6), art. 4(2), art. 14(6), annex II point 2
 */
export const assembly = calculation({
  id: 'ped.assembly',
  title: 'Conformity category of an assembly',
  inputs,
  outputs: z.strictObject({
    category: z.enum(pedCategories).meta({ description: 'Highest category of the pressure equipment' }),
    decidedBy: z.string().meta({ description: 'Item that sets it' }),
    modules: z
      .array(z.string())
      .meta({ description: 'One to be chosen; those of a higher category may be chosen' }),
    notifiedBody: notifiedBodyField,
    ceMarking: z.boolean().meta({ description: 'CE marking under this directive' }),
    accessories: z.array(
      z.strictObject({
        name: nameField('What the accessory is'),
        category: z.enum(pedCategories).meta({ description: 'Category of the accessory' }),
        reason: z.string().meta({ description: 'Why it has this category' }),
      }),
    ),
    statement: z.string().meta({ description: 'What it means, to be checked against the text in force' }),
  }),
  formula: String.raw`\text{category} = \max_{i\,\ne\,\text{safety accessory}} \text{category}_i`,
  range: 'pressure equipment assembled by one manufacturer to an integrated, functional whole',
  source: [
    published('2014/68/EU art. 14(6)(b), highest category other than that of safety accessories'),
    fromMemory('2014/68/EU annex II point 2, safety accessories in category IV; art. 2(6), art. 4(2)'),
  ],
  compute: ({ equipment: items, safetyAccessories }, log) => {
    const accessories: AccessoryClass[] = [];
    for (const [index, own] of safetyAccessories.entries()) {
      const found = classOf(own, items);
      if (found === undefined) {
        const field = `safetyAccessories.${String(index)}.madeFor`;
        const allowed = items.map((item) => item.name).join(', ');
        return {
          ok: false,
          error: {
            code: 'CALC_INVALID_INPUT',
            message: `${field}: ${own.madeFor ?? ''} given; name one of the equipment: ${allowed}`,
            field,
            given: own.madeFor ?? '',
            allowed,
          },
        };
      }
      accessories.push(found);
    }
    const category = highestCategory(items.map((item) => item.category));
    const decidedBy = items.find((item) => item.category === category)?.name ?? '';
    const { modules, notifiedBody, ceMarking } = conformityOf(category);
    log?.({
      symbol: 'category',
      formula: 'highest of the pressure equipment, safety accessories left out',
      substituted: items.map((item) => `${item.name} ${item.category}`).join(', '),
      value: category,
      unit: '1',
      note: `set by ${decidedBy}`,
    });
    for (const found of accessories) {
      log?.({
        symbol: 'category',
        formula: found.reason,
        substituted: found.name,
        value: found.category,
        unit: '1',
      });
    }
    return succeed({
      category,
      decidedBy,
      modules: [...modules],
      notifiedBody,
      ceMarking,
      accessories: accessories.map((found) => ({ ...found })),
      statement: `The assembly is assessed as a whole by category ${category}: each item that was not assessed before, the integration of the items, and the protection against exceeding the limits. To be checked against the text in force.`,
    });
  },
});
