import {
  type ItemField,
  itemFieldsOf,
  nearestName,
  type PriceList,
  type SlotName,
  slotNames,
} from '@flangewise/model';
import { findUnit } from '@flangewise/quantities';
import { headOf, numberHead, slotHead } from './item-columns.js';
import { isPriceHead, priceHead } from './price-column.js';

/** What a column says of the items of one slot. */
export interface FieldColumn {
  readonly path: string;
  readonly field: ItemField;
}

export type ColumnMeaning =
  | { readonly is: 'slot' }
  | { readonly is: 'price'; readonly list: PriceList }
  /** Of each slot that has such a field. */
  | { readonly is: 'field'; readonly of: ReadonlyMap<SlotName, FieldColumn> }
  /** Says something that nobody reads, for instance the name beside a price. */
  | { readonly is: 'unread' }
  | { readonly is: 'unknown'; readonly message: string };

const simple = (words: string): string => words.toLowerCase().replaceAll(/\s+/g, ' ').trim();

const labelled = new Map<SlotName, ReadonlyMap<string, ItemField>>();

const fieldsByLabel = (slot: SlotName): ReadonlyMap<string, ItemField> => {
  const known =
    labelled.get(slot) ?? new Map(itemFieldsOf(slot).map((field) => [simple(field.label), field] as const));
  labelled.set(slot, known);
  return known;
};

/** "ports 3 free diameter [mm]" → words with # for 3, the place 2, the unit. */
const parts = (head: string) => {
  const [, words = head, unit] = /^(.*?)\s*\[([^\]]*)\]\s*$/.exec(head) ?? [];
  const places: number[] = [];
  const template = simple(words).replaceAll(/(?<= )\d+(?= |$)/g, (digits) => {
    places.push(Number(digits) - 1);
    return '#';
  });
  return { words: simple(words), template, places, unit };
};

/** The field in the unit that the head names; undefined where its numbers have no such unit. */
const inUnit = (field: ItemField, unit: string | undefined): ItemField | undefined => {
  const own = field.unit;
  if (own === undefined) return unit === undefined ? field : undefined;
  if (unit === undefined) return undefined;
  if (unit.trim() === own.label) return field;
  const { conversion } = own;
  if (conversion === undefined) return undefined;
  const gauge = own.label.endsWith('(g)');
  const label = gauge ? unit.replace(/\s*\(g\)\s*$/, '') : unit;
  if (gauge && label === unit) return undefined;
  const shown = findUnit(conversion.kind, label);
  return shown === undefined
    ? undefined
    : { ...field, unit: { label: unit.trim(), conversion: { ...conversion, shown } } };
};

const withPlaces = (path: string, places: readonly number[]): string => {
  const left = [...places];
  return path.replaceAll('[]', () => `[${String(left.shift() ?? 0)}]`);
};

/** Most of several parts of one item; a head with a larger number is a slip. */
const mostOfSeveral = 200;

const fieldColumn = (head: string, slot: SlotName): FieldColumn | string | undefined => {
  const { words, template, places, unit } = parts(head);
  const known = fieldsByLabel(slot);
  const found = known.get(words) ?? known.get(template);
  if (found === undefined || found.path === 'slot') return undefined;
  const several = found.path.includes('[]');
  if (several && places.some((place) => place < 0 || place >= mostOfSeveral))
    return `count from 1 to ${String(mostOfSeveral)}`;
  const path = several ? withPlaces(found.path, places) : found.path;
  const field = inUnit(found, unit);
  return field === undefined ? `write the head with its unit: "${headOf(found, path)}"` : { path, field };
};

const unknownHead = (head: string, slots: readonly SlotName[]): string => {
  const { template } = parts(head);
  const meant = nearestName(template, [...new Set(slots.flatMap((slot) => [...fieldsByLabel(slot).keys()]))]);
  return meant === undefined
    ? 'there is no such column; take it out, or head it as an export does'
    : `there is no such column; was "${meant}" meant? Take it out, or head it as an export does`;
};

export interface HeadOf {
  readonly holds: SlotName | 'prices' | undefined;
  readonly priceLists: readonly PriceList[];
}

const priceMeaning = (head: string, priceLists: readonly PriceList[]): ColumnMeaning => {
  const list = priceLists.find((one) => simple(priceHead(one)) === simple(head));
  if (list !== undefined) return { is: 'price', list };
  const known = priceLists.map((one) => `"${priceHead(one)}"`).join(', ');
  return {
    is: 'unknown',
    message:
      known === ''
        ? 'there is no price list; add it before its prices'
        : `there is no such price list; columns of prices are ${known}`,
  };
};

/** What a column of a table means. */
export const meaningOf = (head: string, { holds, priceLists }: HeadOf): ColumnMeaning => {
  if (isPriceHead(head)) return priceMeaning(head, priceLists);
  if (holds === 'prices')
    return simple(head) === numberHead
      ? { is: 'field', of: new Map() }
      : simple(head) === 'name'
        ? { is: 'unread' }
        : {
            is: 'unknown',
            message: 'there is no such column; a sheet of prices has number, name and prices',
          };
  if (simple(head) === slotHead) return { is: 'slot' };
  const slots = holds === undefined ? slotNames : [holds];
  const of = new Map<SlotName, FieldColumn>();
  const refused: string[] = [];
  for (const slot of slots) {
    const column = fieldColumn(head, slot);
    if (typeof column === 'string') refused.push(column);
    else if (column !== undefined) of.set(slot, column);
  }
  if (of.size > 0) return { is: 'field', of };
  return { is: 'unknown', message: refused[0] ?? unknownHead(head, slots) };
};
