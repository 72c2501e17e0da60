import { isDeepStrictEqual } from 'node:util';
import type { Catalogue, Item, PriceList } from '@flangewise/model';
import { itemById } from '../find-items.js';
import type { ImportReport } from './import-report.js';
import type { TroubleLog } from './trouble-log.js';

/** What a file says, to be put over a catalogue. */
export interface Incoming {
  readonly items: ReadonlyMap<string, Item>;
  /** Prices by list and item; null takes one out. */
  readonly prices: ReadonlyMap<string, ReadonlyMap<string, string | null>>;
  /** Whole lists, by id; undefined where the file holds single prices. */
  readonly priceLists?: readonly PriceList[];
  /** Other parts of the document that the file holds. */
  readonly rest?: Partial<Catalogue>;
}

const withPrices = (list: PriceList, said: ReadonlyMap<string, string | null> | undefined): PriceList => {
  if (said === undefined) return list;
  const prices = new Map(Object.entries(list.prices));
  for (const [id, price] of said) {
    const before = prices.get(id);
    if (price === null) prices.delete(id);
    // An amount that is the same in other digits stays as it was written.
    else if (before === undefined || Number(before) !== Number(price)) prices.set(id, price);
  }
  return { ...list, prices: Object.fromEntries(prices) };
};

const mergedLists = (catalogue: Catalogue, { priceLists = [], prices }: Incoming): PriceList[] => {
  const given = new Map(priceLists.map((list) => [list.id, list]));
  const kept = catalogue.priceLists.map((list) => {
    const other = given.get(list.id);
    return other === undefined ? list : { ...other, prices: { ...list.prices, ...other.prices } };
  });
  const added = priceLists.filter(({ id }) => !catalogue.priceLists.some((list) => list.id === id));
  return [...kept, ...added].map((list) => withPrices(list, prices.get(list.id)));
};

/** Items whose price in some list is another one. */
const repriced = (before: Catalogue, after: readonly PriceList[]): ReadonlySet<string> => {
  const changed = new Set<string>();
  for (const list of after) {
    const old = before.priceLists.find(({ id }) => id === list.id)?.prices ?? {};
    for (const id of new Set([...Object.keys(old), ...Object.keys(list.prices)]))
      if (old[id] !== list.prices[id]) changed.add(id);
  }
  return changed;
};

/** What a file does to a catalogue: adds and changes, and takes nothing out. Any trouble, and there is no new catalogue. */
export const mergedReport = (
  catalogue: Catalogue,
  { incoming, log }: { readonly incoming: Incoming; readonly log: TroubleLog },
): ImportReport => {
  const { items, rest = {} } = incoming;
  const priceLists = mergedLists(catalogue, incoming);
  const otherPrice = repriced(catalogue, priceLists);
  const added: Item[] = [];
  const changed = new Map<string, Item>();
  let unchanged = 0;
  for (const [id, item] of items) {
    const before = itemById(catalogue, id);
    if (before === undefined) added.push(item);
    else if (isDeepStrictEqual(before, item) && !otherPrice.has(id)) unchanged += 1;
    else changed.set(id, item);
  }
  const others = [...otherPrice].filter((id) => !items.has(id)).length;
  return {
    rows: items.size,
    added: added.length,
    changed: changed.size + others,
    unchanged,
    troubles: log.troubles,
    furtherTroubles: log.further,
    ...(log.isEmpty
      ? {
          catalogue: {
            ...catalogue,
            ...rest,
            items: [...catalogue.items.map((item) => changed.get(item.id) ?? item), ...added],
            priceLists,
          },
        }
      : {}),
  };
};

/** What is said of a file that cannot be read at all, or not to its end. */
export const refusedReport = (rows: number, log: TroubleLog): ImportReport => ({
  rows,
  added: 0,
  changed: 0,
  unchanged: 0,
  troubles: log.troubles,
  furtherTroubles: log.further,
});
