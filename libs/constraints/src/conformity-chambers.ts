import {
  classifyVessel,
  conformityOf,
  highestCategory,
  pedCategories,
  type PedCategory,
} from '@flangewise/engineering';
import type { Conformity, Item, ItemOf } from '@flangewise/model';
import { commonPractice, fromMemory, published } from './source.js';

const article = (category: PedCategory): string =>
  category === 'Art4(3)' ? 'article 4(3)' : category === 'out of scope' ? category : `category ${category}`;

const asCategory = (name: string): PedCategory | undefined => pedCategories.find((c) => c === name);

/** What the jacket holds: its gap over the heated area, which is a little less than a jacket with its nozzles [L]. */
const jacketVolumeL = ({ areaM2, gapM }: NonNullable<ItemOf<'vessel'>['jacket']>): number =>
  areaM2 * gapM * 1000;

/**
 * The jacket is a chamber of its own. Heat-transfer oil runs above its flash point, which makes it a fluid of
 * group 1; it counts as a liquid while its vapour pressure at TS is not above 0.5 bar gauge.
 */
export const jacketConformity = (vessel: ItemOf<'vessel'>, set: number): readonly Conformity[] => {
  if (vessel.jacket === null) return [];
  const maxPressureBarGauge = vessel.jacket.maxPressurePaGauge / 1e5;
  const volumeL = jacketVolumeL(vessel.jacket);
  const { category, table, disputed } = classifyVessel({
    volumeL,
    maxPressureBarGauge,
    fluidState: 'liquid',
    fluidGroup: 1,
  });
  return [
    {
      set,
      region: 'European Union',
      category,
      fluidGroup: 1,
      statement: `Jacket of ${vessel.name}, a chamber of its own: taken as oil above its flash point (liquid of fluid group 1; with a vapour pressure above 0.5 bar(g) at TS it is a gas), ${table === 0 ? 'PS not above 0.5 bar' : `annex II table ${String(table)}`}, PS × V = ${maxPressureBarGauge.toPrecision(3)} bar × ${volumeL.toPrecision(3)} L: ${article(category)}.${disputed ? ' Check with the notified body.' : ''} The strictest chamber counts for the vessel.`,
      modules: [...conformityOf(category).modules],
      source: [published('2014/68/EU art. 4, art. 13, annex II'), fromMemory('2014/68/EU art. 2, chambers')],
    },
  ];
};

/** The system as an assembly: the highest of its categories, safety accessories aside, which are of category IV. */
export const assemblyConformity = (
  chambers: readonly Conformity[],
  discs: readonly Item[],
): readonly Conformity[] => {
  const categories = chambers.flatMap((c) => asCategory(c.category) ?? []);
  if (categories.length === 0) return [];
  const undecided = chambers.some((c) => asCategory(c.category) === undefined);
  const category = highestCategory(categories);
  const names = [...new Set(discs.map((disc) => disc.name))];
  const accessories =
    names.length === 0
      ? ''
      : ` ${names.join(', ')}: safety accessor${names.length === 1 ? 'y' : 'ies'}, category IV of ${names.length === 1 ? 'its' : 'their'} own unless made for this vessel alone.`;
  return [
    {
      set: 0,
      region: 'European Union',
      category: undecided ? 'not decidable' : category,
      statement: `The system as an assembly: ${undecided ? 'not decidable while a chamber is not' : `${article(category)}, the highest of its pressure equipment without the safety accessories`}; its integration and protection are assessed as a whole.${accessories}`,
      modules: undecided ? [] : [...conformityOf(category).modules],
      source: [
        fromMemory('2014/68/EU art. 2(6), art. 4(2), art. 14(6)'),
        fromMemory('2014/68/EU annex II point 2 (safety accessories)'),
        commonPractice('categories of the maker; the notified body decides'),
      ],
    },
  ];
};
