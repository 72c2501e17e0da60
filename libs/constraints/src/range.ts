import type { Catalogue, Item, SpecialRates } from '@flangewise/model';

/** The range in use: its items, and list prices where the person may see them. */
export interface Range {
  readonly revision: string;
  readonly items: ReadonlyMap<string, Item>;
  /** Additive whole list prices by item; absent for customers. */
  readonly prices?: ReadonlyMap<string, number>;
  /** What special vessels cost; absent for customers. */
  readonly specialRates?: SpecialRates;
  /** Working days until a system of these parts can be shipped, by the maker's delivery chain. */
  readonly deliveryDays: (items: readonly Item[]) => number;
}

/** What quotation supplies. */
export interface Commercial {
  readonly prices?: ReadonlyMap<string, number>;
  readonly specialRates?: SpecialRates;
  readonly deliveryDays: (items: readonly Item[]) => number;
}

export const rangeOf = (catalogue: Pick<Catalogue, 'revision' | 'items'>, commercial: Commercial): Range => ({
  revision: catalogue.revision,
  items: new Map(catalogue.items.map((item) => [item.id, item])),
  ...commercial,
});

/** The same range with parts made for one system. */
export const withSpecials = (
  range: Range,
  specials: readonly { readonly item: Item; readonly price?: number }[],
): Range =>
  specials.length === 0
    ? range
    : {
        ...range,
        items: new Map([...range.items, ...specials.map((s) => [s.item.id, s.item] as const)]),
        ...(range.prices === undefined
          ? {}
          : {
              prices: new Map([
                ...range.prices,
                ...specials.flatMap((s) => (s.price === undefined ? [] : [[s.item.id, s.price] as const])),
              ]),
            }),
      };
