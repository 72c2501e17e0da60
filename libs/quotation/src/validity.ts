import type { PriceList } from '@flangewise/model';
import terms from './terms.json' with { type: 'json' };

const dayMs = 86_400_000;

/** Adds days to a calendar date `YYYY-MM-DD`. */
const addDays = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);

/** An offer stands for the maker's usual time, and no longer than the price list it rests on. */
export const validUntilOf = (date: string, list: Pick<PriceList, 'validUntil'>): string => {
  const usual = addDays(date, terms.validityDays);
  return usual < list.validUntil ? usual : list.validUntil;
};
