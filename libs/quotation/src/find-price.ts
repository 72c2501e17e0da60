import { type Catalogue, fail, type Item, type Outcome, type PriceList, succeed } from '@flangewise/model';
import { Money } from './money.js';
import type { QuotationTrouble } from './trouble.js';

/** @error QUOTE_UNKNOWN_PRICE_LIST */
export const priceListById = (
  { priceLists }: Pick<Catalogue, 'priceLists'>,
  id: string,
): Outcome<PriceList, QuotationTrouble> => {
  const found = priceLists.find((list) => list.id === id);
  return found === undefined
    ? fail({
        code: 'QUOTE_UNKNOWN_PRICE_LIST',
        message: `offer.priceList: ${id} is not a price list of this catalogue; there ${priceLists.length === 0 ? 'is none' : `are ${priceLists.map((list) => list.id).join(', ')}`}`,
        path: 'offer.priceList',
      })
    : succeed(found);
};

/** @error QUOTE_NO_PRICE */
export const listPriceOf = (
  list: PriceList,
  item: Pick<Item, 'id' | 'name'>,
): Outcome<Money, QuotationTrouble> => {
  const price = list.prices[item.id];
  return price === undefined
    ? fail({
        code: 'QUOTE_NO_PRICE',
        message: `${item.id} (${item.name}) has no price in ${list.id}; add it to the list or choose another item`,
      })
    : succeed(new Money(price));
};
