import {
  fail,
  type Outcome,
  type PriceList,
  type ServiceRate,
  succeed,
  type WantedService,
} from '@flangewise/model';
import { Money, toCents } from './money.js';
import type { QuotationTrouble } from './trouble.js';

export interface PricedService {
  readonly rate: ServiceRate;
  readonly quantity: number;
  readonly amount: Money;
}

/**
 * Work that is wanted with a system, at the rates of a list: quantity times rate, rounded to cents half away from zero.
 *
 * @error QUOTE_UNKNOWN_SERVICE for one that the list has no rate for
 */
export const pricedServices = (
  list: Pick<PriceList, 'id' | 'serviceRates'>,
  wanted: readonly WantedService[],
): Outcome<readonly PricedService[], QuotationTrouble> => {
  const rates = list.serviceRates ?? [];
  const priced: PricedService[] = [];
  for (const [index, { service, quantity }] of wanted.entries()) {
    const rate = rates.find((one) => one.service === service);
    if (rate === undefined)
      return fail({
        code: 'QUOTE_UNKNOWN_SERVICE',
        message: `offer.services[${String(index)}].service: ${service} given; ${list.id} has ${rates.length === 0 ? 'no service rates' : rates.map((one) => one.service).join(', ')}`,
        path: `offer.services[${String(index)}].service`,
      });
    priced.push({ rate, quantity, amount: toCents(new Money(rate.rate).times(quantity)) });
  }
  return succeed(priced);
};
