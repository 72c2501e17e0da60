import { type Catalogue, type Outcome, type PriceList, type SpecialRates, succeed } from '@flangewise/model';
import { additivePrices } from './additive-prices.js';
import { deliveryDaysOf } from './delivery.js';
import type { QuotationTrouble } from './trouble.js';

/** What a search over the range has to know of one price list, and of delivery. */
export interface Commercial {
  readonly prices: ReadonlyMap<string, number>;
  readonly specialRates?: SpecialRates;
  readonly deliveryDays: typeof deliveryDaysOf;
}

/** @error as additivePrices */
export const commercialOf = (
  catalogue: Pick<Catalogue, 'items' | 'priceLists'>,
  { id, specialRates }: Pick<PriceList, 'id' | 'specialRates'>,
): Outcome<Commercial, QuotationTrouble> => {
  const prices = additivePrices(catalogue, id);
  return prices.ok
    ? succeed({
        prices: prices.value,
        ...(specialRates === undefined ? {} : { specialRates }),
        deliveryDays: deliveryDaysOf,
      })
    : prices;
};
