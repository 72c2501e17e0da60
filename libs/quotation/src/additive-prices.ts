import { type Catalogue, fail, type Outcome, succeed } from '@flangewise/model';
import { alloySurchargeOf } from './alloy-surcharge.js';
import { listPriceOf, priceListById } from './find-price.js';
import type { QuotationTrouble } from './trouble.js';

/**
 * Whole list prices by item with their alloy surcharges, for a search that adds them up: its best sum is the list total
 * of the offer, before quantity steps, discount, services and tax. The wetted material is no part and costs nothing.
 *
 * @error QUOTE_UNKNOWN_PRICE_LIST; QUOTE_NO_PRICE; QUOTE_PRICE_NOT_WHOLE, since the search adds whole numbers
 */
export const additivePrices = (
  catalogue: Pick<Catalogue, 'items' | 'priceLists'>,
  priceListId: string,
): Outcome<ReadonlyMap<string, number>, QuotationTrouble> => {
  const list = priceListById(catalogue, priceListId);
  if (!list.ok) return list;
  const prices = new Map<string, number>();
  for (const item of catalogue.items) {
    if (item.slot === 'material') {
      prices.set(item.id, 0);
      continue;
    }
    const price = listPriceOf(list.value, item);
    if (!price.ok) return price;
    if (!price.value.isInteger()) {
      return fail({
        code: 'QUOTE_PRICE_NOT_WHOLE',
        message: `${item.id} (${item.name}) costs ${price.value.toFixed(2)} in ${list.value.id}; list prices are whole amounts, round it`,
      });
    }
    prices.set(item.id, price.value.plus(alloySurchargeOf(list.value, item)).toNumber());
  }
  return succeed(prices);
};
