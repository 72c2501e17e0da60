import {
  type Catalogue,
  catalogueSchema,
  fail,
  type InputTrouble,
  type Outcome,
  type PriceList,
  readDocument,
  succeed,
} from '@flangewise/model';
import { itemLifeTroubles } from './item-life-troubles.js';

const repeatedIds = ({ items }: Catalogue): readonly InputTrouble[] => {
  const firstAt = new Map<string, number>();
  return items.flatMap(({ id }, index) => {
    const first = firstAt.get(id);
    if (first === undefined) {
      firstAt.set(id, index);
      return [];
    }
    return [
      {
        path: `items[${String(index)}].id`,
        given: JSON.stringify(id),
        message: `already the number of items[${String(first)}]; give every item a number of its own`,
      },
    ];
  });
};

/** What a price list cannot be used for: prices of items that are none of these, an end before its beginning. */
export const priceListTroubles = (list: PriceList, items: ReadonlySet<string>): readonly InputTrouble[] => {
  const strangers = Object.keys(list.prices)
    .filter((id) => !items.has(id))
    .map((id) => ({
      path: `prices.${id}`,
      given: JSON.stringify(list.prices[id]),
      message: 'there is no item of this number; take the price out or add the item',
    }));
  const backwards =
    list.validUntil < list.validFrom
      ? [
          {
            path: 'validUntil',
            given: list.validUntil,
            message: `ends before it begins (${list.validFrom})`,
          },
        ]
      : [];
  return [...backwards, ...strangers];
};

const unusablePrices = ({ items, priceLists }: Catalogue): readonly InputTrouble[] => {
  const ids = new Set(items.map((item) => item.id));
  return priceLists.flatMap((list, index) =>
    priceListTroubles(list, ids).map(({ path, ...trouble }) => ({
      ...trouble,
      path: `priceLists[${String(index)}].${path}`,
    })),
  );
};

const repeatedLists = ({ priceLists }: Catalogue): readonly InputTrouble[] =>
  priceLists.flatMap((list, index) =>
    priceLists.findIndex((other) => other.id === list.id) === index
      ? []
      : [
          {
            path: `priceLists[${String(index)}].id`,
            given: JSON.stringify(list.id),
            message: 'another price list has this id',
          },
        ],
  );

/**
 * Reads a catalogue that was written elsewhere: every trouble at once, each with its path, what stands there and
 * what is allowed. Items without a price are no trouble here: an offer says so when it needs one.
 */
export const readCatalogue = (document: unknown): Outcome<Catalogue, readonly InputTrouble[]> => {
  const read = readDocument(catalogueSchema, document);
  if (!read.ok) return read;
  const troubles = [
    ...repeatedIds(read.value),
    ...itemLifeTroubles(read.value.items),
    ...repeatedLists(read.value),
    ...unusablePrices(read.value),
  ];
  return troubles.length === 0 ? succeed(read.value) : fail(troubles);
};
