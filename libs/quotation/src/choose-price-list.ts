import { type Catalogue, type Outcome, type PriceList, succeed } from '@flangewise/model';
import { priceListById } from './find-price.js';
import type { QuotationTrouble } from './trouble.js';

/** Which prices are asked for: a list by its id, else one in a currency, else the first. */
export interface PriceWish {
  readonly priceList?: string | undefined;
  readonly currency?: string | undefined;
}

/**
 * The list that answers the wish; undefined where the catalogue holds none.
 * @error QUOTE_UNKNOWN_PRICE_LIST for a list that is named and not there
 */
export const choosePriceList = (
  catalogue: Pick<Catalogue, 'priceLists'>,
  { priceList, currency }: PriceWish,
): Outcome<PriceList | undefined, QuotationTrouble> =>
  priceList === undefined
    ? succeed(catalogue.priceLists.find((list) => list.currency === currency) ?? catalogue.priceLists[0])
    : priceListById(catalogue, priceList);
