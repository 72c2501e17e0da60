import { ruleRevision } from '@flangewise/constraints';
import { seesPrices } from '../auth/visible.js';
import type { PriceWish } from '@flangewise/quotation';
import type { Person } from '../trpc/context.js';
import type { Workshop } from '../workshop/workshop.js';

/** The catalogue as a person may see it, with the prices of the list that a system with this wish is priced by. */
export function catalogueFor(workshop: Workshop, person: Person, { priceList, currency }: PriceWish) {
  const { revision, maker, items } = workshop.catalogue;
  const open = { revision, maker, items, ruleRevision };
  if (!seesPrices(person)) return { ...open, prices: null, specialRates: null, priceList: null };
  const list = workshop.priceListFor({ offer: { priceList }, inquiry: { commercial: { currency } } });
  const { id, prices, specialRates = null } = list;
  return {
    ...open,
    prices: Object.fromEntries(Object.entries(prices).map(([item, price]) => [item, Number(price)])),
    specialRates,
    priceList: { id, currency: list.currency },
  };
}
