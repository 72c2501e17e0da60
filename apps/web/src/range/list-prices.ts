import type { PriceList } from '@flangewise/model';

/** What items cost by one price list. */
export interface ListPrices {
  readonly id: string;
  readonly currency: PriceList['currency'];
  /** Whole list prices by item, as text. */
  readonly of: Readonly<Record<string, string>>;
}

export const listPricesOf = (lists: readonly PriceList[]): readonly ListPrices[] =>
  lists.map(({ id, currency, prices }) => ({ id, currency, of: prices }));
