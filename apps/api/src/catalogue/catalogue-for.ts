import { ruleRevision } from '@flangewise/constraints';
import { seesPrices } from '../auth/visible.js';
import type { Person } from '../trpc/context.js';
import type { Workshop } from '../workshop/workshop.js';

/** The catalogue as a person may see it. */
export function catalogueFor({ catalogue, priceList }: Workshop, person: Person) {
  const { revision, maker, items } = catalogue;
  const open = { revision, maker, items, ruleRevision };
  if (!seesPrices(person)) return { ...open, prices: null, priceList: null };
  const { id, currency, prices } = priceList;
  return {
    ...open,
    prices: Object.fromEntries(Object.entries(prices).map(([item, price]) => [item, Number(price)])),
    priceList: { id, currency },
  };
}
