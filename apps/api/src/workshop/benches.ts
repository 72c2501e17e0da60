import { createBench, rangeOf, ruleBook, type Bench } from '@flangewise/constraints';
import { additivePrices, deliveryDaysOf } from '@flangewise/quotation';
import type { Stock } from './stock.js';

export interface Benches {
  readonly priced: Bench;
  readonly unpriced: Bench;
}

/** @throws where the price list is not complete: an error of the maker's data, not of a person's input */
export function createBenches({ catalogue, priceListId, specialRates }: Stock): Benches {
  const prices = additivePrices(catalogue, priceListId);
  if (!prices.ok) throw new Error(prices.error.message);
  return {
    priced: createBench(
      rangeOf(catalogue, { prices: prices.value, specialRates, deliveryDays: deliveryDaysOf }),
      ruleBook,
    ),
    unpriced: createBench(rangeOf(catalogue, { deliveryDays: deliveryDaysOf }), ruleBook),
  };
}
