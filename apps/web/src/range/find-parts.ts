import { type Item, type SlotName, slotNames } from '@flangewise/model';
import { mainValuesOf, massOf, ratingOf } from './main-values';
import { plain, searchTerms, termBeginning, wholeTerm } from './search-terms';

/** One part of the range as the table shows it. */
export interface Part {
  readonly item: Item;
  readonly rating: readonly string[];
  readonly values: readonly string[];
  readonly mass: string;
  /** Everything that a search reads, in small letters and with plain spaces. */
  readonly text: string;
}

export const partsOf = (items: readonly Item[]): readonly Part[] =>
  items.map((item) => {
    const [rating, values, mass] = [ratingOf(item), mainValuesOf(item), massOf(item)];
    const { id, name, families, wetted } = item;
    return {
      item,
      rating,
      values,
      mass,
      text: plain([id, name, ...families, ...wetted, ...rating, ...values].join(' | ')),
    };
  });

export interface Wanted {
  /** Words and values, in any order; a part has to have each. */
  readonly text: string;
  /** Undefined for every slot. */
  readonly slot: SlotName | undefined;
  /** Undefined for every family; a part of any family is of each. */
  readonly family?: string | undefined;
  /** That product or gas touches. */
  readonly material?: string | undefined;
  readonly life?: Item['life'] | undefined;
}

export interface PartGroup {
  readonly slot: SlotName;
  readonly parts: readonly Part[];
}

/** What finds a term: as a whole; the beginning of words of part numbers too, where no part has it so. */
const finderOf = (parts: readonly Part[], term: string): RegExp => {
  const whole = wholeTerm(term);
  return parts.some(({ text }) => whole.test(text)) ? whole : termBeginning(term);
};

const anyFamily = 'any';

const isOf = ({ item }: Part, { slot, family, material, life }: Wanted): boolean =>
  (slot === undefined || item.slot === slot) &&
  (family === undefined || item.families.includes(family) || item.families.includes(anyFamily)) &&
  (material === undefined || item.wetted.includes(material)) &&
  (life === undefined || item.life === life);

/** Names that parts have in a field of several, each once, in order. */
export const namesIn = (items: readonly Item[], of: (item: Item) => readonly string[]): readonly string[] =>
  [...new Set(items.flatMap(of))]
    .filter((name) => name !== anyFamily)
    .sort((a, b) => a.localeCompare(b, 'en'));

/** The parts that are wanted, slot by slot in the order in which an engineer chooses. */
export const findParts = (parts: readonly Part[], wanted: Wanted): readonly PartGroup[] => {
  const finders = searchTerms(wanted.text).map((term) => finderOf(parts, term));
  const bySlot = new Map<SlotName, Part[]>();
  for (const part of parts) {
    if (!isOf(part, wanted) || !finders.every((finder) => finder.test(part.text))) continue;
    const ofSlot = bySlot.get(part.item.slot);
    if (ofSlot === undefined) bySlot.set(part.item.slot, [part]);
    else ofSlot.push(part);
  }
  return slotNames.flatMap((slot) => {
    const some = bySlot.get(slot);
    return some === undefined ? [] : [{ slot, parts: some }];
  });
};
