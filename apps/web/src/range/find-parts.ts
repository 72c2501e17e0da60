import { type Item, type SlotName, slotNames } from '@flangewise/model';
import { mainValuesOf, massOf, ratingOf } from './main-values';

/** One part of the range as the table shows it. */
export interface Part {
  readonly item: Item;
  readonly rating: readonly string[];
  readonly values: readonly string[];
  readonly mass: string;
  /** Everything that a search reads, in small letters and with plain spaces. */
  readonly text: string;
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll('\u2060', '')
    .replaceAll(/[\s\u2009]+/g, ' ');

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
  /** Words, in any order; each has to stand somewhere in the part. */
  readonly text: string;
  /** Undefined for every slot. */
  readonly slot: SlotName | undefined;
}

export interface PartGroup {
  readonly slot: SlotName;
  readonly parts: readonly Part[];
}

/** The parts that are wanted, slot by slot in the order in which an engineer chooses. */
export const findParts = (parts: readonly Part[], { text, slot }: Wanted): readonly PartGroup[] => {
  const words = plain(text)
    .split(' ')
    .filter((word) => word !== '');
  const found = parts.filter((part) => words.every((word) => part.text.includes(word)));
  return slotNames
    .filter((name) => slot === undefined || name === slot)
    .map((name) => ({ slot: name, parts: found.filter(({ item }) => item.slot === name) }))
    .filter(({ parts: some }) => some.length > 0);
};
