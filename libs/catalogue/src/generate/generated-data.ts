import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import {
  type Catalogue,
  type Item,
  itemSchema,
  type PriceList,
  type SlotName,
  slotNames,
} from '@flangewise/model';
import { completeCover } from '../complete-cover.js';
import { completeVessel } from '../complete-vessel.js';
import type { CoverDesign } from '../cover-design.js';
import covers from '../designs/covers.json' with { type: 'json' };
import lives from '../designs/item-lives.json' with { type: 'json' };
import vessels from '../designs/vessels.json' with { type: 'json' };
import type { VesselDesign } from '../vessel-design.js';
import { coversOfSeries } from './cover-series.js';
import { listPrice } from './list-price.js';
import { partKinds } from './part-kinds.js';
import type { PricedDesign } from './priced-design.js';
import { itemsOfSeries, type PricedItem } from './series.js';
import { vesselsOfSeries } from './vessel-series.js';

const singleVessels = vessels as unknown as readonly VesselDesign[];
const singleCovers = covers as unknown as readonly CoverDesign[];
const seriesVessels = vesselsOfSeries();
const seriesCovers = coversOfSeries(singleCovers);

/** Every design, one by one and of series. */
export const vesselDesigns = [...singleVessels, ...seriesVessels.map(({ design }) => design)];
export const coverDesigns = [...singleCovers, ...seriesCovers.map(({ design }) => design)];

const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));

/** Items that are typed in full, in the order of the file. */
const typedItems = (slot: SlotName): readonly Item[] => read(`../typed/${slot}.json`) as readonly Item[];

type Completed = ReturnType<typeof completeVessel> | ReturnType<typeof completeCover>;

const built = <D extends { readonly id: string }>(design: D, complete: (design: D) => Completed): Item => {
  const item = complete(design);
  if (!item.ok) throw new Error(`${design.id} cannot be built: ${item.error.message}`);
  return item.value;
};

/** Items of a slot that are designed or typed one by one. */
const singleItems = (slot: SlotName): readonly Item[] => {
  if (slot === 'vessel') return singleVessels.map((design) => built(design, completeVessel));
  if (slot === 'cover') return singleCovers.map((design) => built(design, completeCover));
  return typedItems(slot);
};

const priced = <D extends { readonly id: string }>(
  designs: readonly PricedDesign<D>[],
  complete: (design: D) => Completed,
): readonly PricedItem[] =>
  designs.map(({ design, priceEur }) => ({ item: built(design, complete), priceEur }));

const seriesItems = (slot: SlotName): readonly PricedItem[] => {
  if (slot === 'vessel') return priced(seriesVessels, completeVessel);
  if (slot === 'cover') return priced(seriesCovers, completeCover);
  const kind = partKinds.find((one) => one.slot === slot);
  return kind === undefined ? [] : itemsOfSeries(kind, read(`../designs/series/${slot}.json`));
};

/** A member of a series that the range already has under another number is left out. */
const newOnes = (single: readonly Item[], members: readonly PricedItem[]): readonly PricedItem[] => {
  const key = ({ name, families }: Item): string => `${name}|${[...families].sort().join()}`;
  const known = new Set(single.map(key));
  return members.filter(({ item }) => {
    const isNew = !known.has(key(item));
    known.add(key(item));
    return isNew;
  });
};

/**
 * Items of a slot under names of their own: where one before has the name already, what it is for follows; where that
 * does not tell them apart, the number.
 */
const distinctlyNamed = (items: readonly Item[]): readonly Item[] => {
  const taken = new Set<string>();
  return items.map((item) => {
    const ways = [item.name, `${item.name}, ${item.families.join(' and ')}`, `${item.name}, ${item.id}`];
    const name = ways.find((way) => !taken.has(way)) ?? item.name;
    taken.add(name);
    return { ...item, name };
  });
};

/** Lives and links laid over the items that they name. */
const withLives = (items: readonly Item[]): readonly Item[] => {
  const known = new Set(items.map(({ id }) => id));
  const strangers = Object.keys(lives.lives).filter((id) => !known.has(id));
  if (strangers.length > 0)
    throw new Error(`item-lives.json names ${strangers.join(', ')}, which the range has not`);
  const byId: Readonly<Record<string, object>> = lives.lives;
  return items.map((item) => itemSchema.parse({ ...item, ...byId[item.id] }));
};

export interface GeneratedRange {
  readonly items: readonly Item[];
  /** List prices of the members of series, in euro. */
  readonly seriesPricesEur: ReadonlyMap<string, number>;
}

/** The whole range in the order of the slots: items typed or designed one by one, then the members of series. */
export const generatedRange = (): GeneratedRange => {
  const bySlot = slotNames.map((slot) => {
    const single = singleItems(slot);
    return { single, members: newOnes(single, seriesItems(slot)) };
  });
  return {
    items: withLives(
      bySlot.flatMap(({ single, members }) =>
        distinctlyNamed([...single, ...members.map(({ item }) => item)]),
      ),
    ),
    seriesPricesEur: new Map(
      bySlot.flatMap(({ members }) => members.map(({ item, priceEur }) => [item.id, priceEur])),
    ),
  };
};

/** Price of a member of a series in another currency, by the rate at which the typed prices were set. */
const ratesToEur: Readonly<Record<string, number>> = { EUR: 1, GBP: 0.88 };

/** A price list with the typed prices and those of the series. */
export const withSeriesPrices = (
  typed: PriceList,
  seriesPricesEur: GeneratedRange['seriesPricesEur'],
): PriceList => {
  const rate = ratesToEur[typed.currency];
  if (rate === undefined) throw new Error(`no rate from euro to ${typed.currency}`);
  const added = [...seriesPricesEur].map(([id, price]) => [id, String(listPrice(price * rate))] as const);
  const prices = Object.fromEntries(
    [...Object.entries(typed.prices), ...added].sort(([a], [b]) => (a < b ? -1 : 1)),
  );
  return { ...typed, prices };
};

export const typedPriceLists = (): readonly PriceList[] =>
  (read('../typed/price-lists.json') as { readonly lists: readonly PriceList[] }).lists;

/** Keys in order, so that the digest does not hang on how a file was written. */
const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
};

/** Name of a state of the range: the month of its price lists and a digest of all items and prices. */
export const revisionOf = (month: string, range: Pick<Catalogue, 'items' | 'priceLists'>): string =>
  `${month}-${createHash('sha256')
    .update(JSON.stringify(sorted([range.items, range.priceLists])))
    .digest('hex')
    .slice(0, 8)}`;
