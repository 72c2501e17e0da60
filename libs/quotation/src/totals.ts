import { type Money, percentOf, sumOf } from './money.js';

export interface Totals {
  readonly list: Money;
  readonly discount: Money;
  readonly net: Money;
  readonly tax: Money;
  readonly total: Money;
}

export interface TotalsQuestion {
  /** Totals of the positions, exact. */
  readonly positions: readonly Money[];
  readonly discountPercent: Money;
  readonly taxPercent: Money;
}

/**
 * Sums of an offer. Discount and tax are rounded to cents once each, on the sum and not on the positions; all
 * else is exact, so list − discount = net and net + tax = total to the last cent.
 */
export const totalsOf = ({ positions, discountPercent, taxPercent }: TotalsQuestion): Totals => {
  const list = sumOf(positions);
  const discount = percentOf(list, discountPercent);
  const net = list.minus(discount);
  const tax = percentOf(net, taxPercent);
  return { list, discount, net, tax, total: net.plus(tax) };
};
