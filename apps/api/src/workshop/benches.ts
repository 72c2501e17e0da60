import { createBench, rangeOf, ruleBook, type Bench } from '@flangewise/constraints';
import type { Catalogue } from '@flangewise/model';
import { commercialOf, deliveryDaysOf, priceListById } from '@flangewise/quotation';

export interface Benches {
  readonly unpriced: Bench;
  /**
   * The bench with the prices of one list. Benches keep their tables, so each is made once.
   * @throws where the list is not there or not complete: an error of the maker's data, not of a person's input
   */
  priced(priceList: string): Bench;
}

export function createBenches(catalogue: Catalogue): Benches {
  const byList = new Map<string, Bench>();
  const make = (priceList: string): Bench => {
    const list = priceListById(catalogue, priceList);
    if (!list.ok) throw new Error(list.error.message);
    const commercial = commercialOf(catalogue, list.value);
    if (!commercial.ok) throw new Error(commercial.error.message);
    return createBench(rangeOf(catalogue, commercial.value), ruleBook);
  };
  return {
    unpriced: createBench(rangeOf(catalogue, { deliveryDays: deliveryDaysOf }), ruleBook),
    priced(priceList) {
      const bench = byList.get(priceList) ?? make(priceList);
      byList.set(priceList, bench);
      return bench;
    },
  };
}
