import { fail, type Outcome, type PriceList, succeed } from '@flangewise/model';
import terms from './terms.json' with { type: 'json' };
import type { QuotationTrouble } from './trouble.js';

const dayMs = 86_400_000;

/** Adds days to a calendar date `YYYY-MM-DD`. */
const addDays = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);

/**
 * Until when an offer of this date stands: for the maker's usual time, and no longer than the price list it rests on.
 *
 * @error QUOTE_PRICE_LIST_ENDED where the list ended before the date
 */
export const validUntilOf = (
  date: string,
  list: Pick<PriceList, 'id' | 'validUntil'>,
): Outcome<string, QuotationTrouble> => {
  if (list.validUntil < date)
    return fail({
      code: 'QUOTE_PRICE_LIST_ENDED',
      message: `offer.date: ${date} given; an offer by price list ${list.id} may be dated up to ${list.validUntil}, when the list ends: date it earlier, or choose a list that is in force`,
      path: 'offer.date',
    });
  const usual = addDays(date, terms.validityDays);
  return succeed(usual < list.validUntil ? usual : list.validUntil);
};
