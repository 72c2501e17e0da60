import { ruleRevision } from '@flangewise/constraints';
import { seesPrices } from '../auth/visible.js';
import { choosePriceList } from '@flangewise/quotation';
import type { Person } from '../trpc/context.js';
import type { Workshop } from '../workshop/workshop.js';

/** The catalogue as a person may see it; prices by the list in this currency, else by the first. */
export function catalogueFor({ catalogue }: Workshop, person: Person, currency: string | undefined) {
  const { revision, maker, items } = catalogue;
  const open = { revision, maker, items, ruleRevision };
  const list = choosePriceList(catalogue, { currency });
  if (!seesPrices(person) || !list.ok || list.value === undefined)
    return { ...open, prices: null, specialRates: null, priceList: null };
  const { id, prices, specialRates = null } = list.value;
  return {
    ...open,
    prices: Object.fromEntries(Object.entries(prices).map(([item, price]) => [item, Number(price)])),
    specialRates,
    priceList: { id, currency: list.value.currency },
  };
}
