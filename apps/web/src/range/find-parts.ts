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

/** The parts that are wanted, slot by slot in the order in which an engineer chooses. */
export const findParts = (parts: readonly Part[], { text, slot }: Wanted): readonly PartGroup[] => {
  const finders = searchTerms(text).map((term) => finderOf(parts, term));
  const found = parts.filter((part) => finders.every((finder) => finder.test(part.text)));
  return slotNames
    .filter((name) => slot === undefined || name === slot)
    .map((name) => ({ slot: name, parts: found.filter(({ item }) => item.slot === name) }))
    .filter(({ parts: some }) => some.length > 0);
};
