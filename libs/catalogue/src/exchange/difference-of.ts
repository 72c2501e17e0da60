import {
  type Catalogue,
  fieldText,
  type Item,
  type ItemLeaf,
  leavesOf,
  type PriceList,
  type SlotName,
} from '@flangewise/model';
import { itemById } from '../find-items.js';
import type { CatalogueDifference, FieldChange } from './catalogue-difference.js';
import { documentChanges } from './document-changes.js';
import { headOf } from './item-columns.js';

const headOfItem = ({ id, slot, name }: Item): { id: string; slot: SlotName; name: string } => ({
  id,
  slot,
  name,
});

const textOf = (leaf: ItemLeaf | undefined): string | null =>
  leaf === undefined ? null : fieldText(leaf.field, leaf.value);

/** Where the shown texts are alike, the digits that tell them apart. */
const apart = (before: ItemLeaf | undefined, after: ItemLeaf | undefined) => {
  const shown = { before: textOf(before), after: textOf(after) };
  return shown.before === shown.after
    ? { before: String(before?.value), after: String(after?.value) }
    : shown;
};

const isSame = (a: ItemLeaf | undefined, b: ItemLeaf | undefined): boolean =>
  a?.value === b?.value || JSON.stringify(a?.value) === JSON.stringify(b?.value);

/** Label of a field without the unit of a table's head: values carry their own. */
const labelOf = (leaf: ItemLeaf, path: string): string => headOf({ ...leaf.field, unit: undefined }, path);

/** The fields in which two states of an item differ, in the order of the schema, those first that there are now. */
const changedFields = (before: Item, after: Item): FieldChange[] => {
  const [old, now] = [leavesOf(before), leavesOf(after)];
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((path) => {
    const [was, is] = [old.get(path), now.get(path)];
    const leaf = is ?? was;
    if (leaf === undefined || isSame(was, is)) return [];
    return [{ path, label: labelOf(leaf, path), ...apart(was, is) }];
  });
};

const listById = (catalogue: Catalogue, id: string): PriceList | undefined =>
  catalogue.priceLists.find((list) => list.id === id);

const both = (before: readonly string[], after: readonly string[]): readonly string[] => [
  ...new Set([...after, ...before]),
];

const changedPrices = (before: Catalogue, after: Catalogue): CatalogueDifference['prices'] =>
  both(
    before.priceLists.map(({ id }) => id),
    after.priceLists.map(({ id }) => id),
  ).flatMap((priceList) => {
    const [old, now] = [listById(before, priceList), listById(after, priceList)];
    // A list that came or went is told once, and not price by price.
    if (old === undefined || now === undefined) return [];
    return both(Object.keys(old.prices), Object.keys(now.prices)).flatMap((id) => {
      const [was = null, is = null] = [old.prices[id], now.prices[id]];
      const item = itemById(after, id) ?? itemById(before, id);
      if (was === is) return [];
      return [{ id, name: item?.name ?? id, priceList, currency: now.currency, before: was, after: is }];
    });
  });

const changedLists = (before: Catalogue, after: Catalogue): CatalogueDifference['priceLists'] =>
  both(
    before.priceLists.map(({ id }) => id),
    after.priceLists.map(({ id }) => id),
  ).flatMap((id): CatalogueDifference['priceLists'] => {
    const terms = (list: PriceList | undefined): object | undefined => {
      if (list === undefined) return undefined;
      const { prices: _, ...others } = list;
      return others;
    };
    const [old, now] = [terms(listById(before, id)), terms(listById(after, id))];
    if (old === undefined) return [{ id, kind: 'added', fields: [] }];
    if (now === undefined) return [{ id, kind: 'removed', fields: [] }];
    const fields = documentChanges(old, now);
    return fields.length === 0 ? [] : [{ id, kind: 'changed', fields }];
  });

const tablesOf = (catalogue: Catalogue): object =>
  (catalogue as Catalogue & { readonly tables?: object }).tables ?? {};

/** What one catalogue has otherwise than another: items, prices, terms of price lists, tables of rules. */
export const differenceOf = (before: Catalogue, after: Catalogue): CatalogueDifference => {
  const changed = after.items.flatMap((item) => {
    const old = itemById(before, item.id);
    if (old === undefined || old === item || old.slot !== item.slot) return [];
    const fields = changedFields(old, item);
    return fields.length === 0 ? [] : [{ ...headOfItem(item), fields }];
  });
  // A number that stands in another slot now is another item.
  const isElsewhere = (item: Item, other: Catalogue): boolean => itemById(other, item.id)?.slot !== item.slot;
  return {
    from: before.revision,
    to: after.revision,
    added: after.items.filter((item) => isElsewhere(item, before)).map(headOfItem),
    removed: before.items.filter((item) => isElsewhere(item, after)).map(headOfItem),
    changed,
    prices: changedPrices(before, after),
    priceLists: changedLists(before, after),
    tables: documentChanges(tablesOf(before), tablesOf(after)),
  };
};
