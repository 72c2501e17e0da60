import { type Catalogue, type Outcome, type PriceList, succeed, type SystemInput } from '@flangewise/model';
import { priceListById } from './find-price.js';
import type { QuotationTrouble } from './trouble.js';

/** Which prices are asked for: a list by its id, else one in a currency, else the first. */
export interface PriceWish {
  readonly priceList?: string | undefined;
  readonly currency?: string | undefined;
}

/** What of a system, as typed or read, decides about its prices. */
export interface PricedSystem {
  readonly offer?: Pick<NonNullable<SystemInput['offer']>, 'priceList'> | undefined;
  readonly inquiry: { readonly commercial?: { readonly currency?: string | undefined } | undefined };
}

/** A system is priced by the list that its offer names, else in the currency that its inquiry asks for. */
export const priceWishOf = ({ offer, inquiry }: PricedSystem): PriceWish => ({
  priceList: offer?.priceList,
  currency: inquiry.commercial?.currency,
});

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
