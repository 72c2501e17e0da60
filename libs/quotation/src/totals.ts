import { type Money, percentOf, sumOf } from './money.js';

export interface Totals {
  readonly list: Money;
  /** What quantities take off the list. */
  readonly quantity: Money;
  readonly discount: Money;
  readonly net: Money;
  readonly tax: Money;
  readonly total: Money;
}

export interface TotalsQuestion {
  /** Totals of the positions, exact. */
  readonly positions: readonly Money[];
  /** What each line gets off for its quantity, in cents. */
  readonly quantityReductions?: readonly Money[];
  /** Work that no discount is given on, in cents. */
  readonly services?: readonly Money[];
  readonly discountPercent: Money;
  readonly taxPercent: Money;
}

/**
 * Sums of an offer. Discount and tax are rounded to cents once each, on the sum and not on the positions; all
 * else is exact, so list − quantity − discount + services = net and net + tax = total to the last cent.
 */
export const totalsOf = ({
  positions,
  quantityReductions = [],
  services = [],
  discountPercent,
  taxPercent,
}: TotalsQuestion): Totals => {
  const list = sumOf(positions);
  const quantity = sumOf(quantityReductions);
  const discount = percentOf(list.minus(quantity), discountPercent);
  const net = list.minus(quantity).minus(discount).plus(sumOf(services));
  const tax = percentOf(net, taxPercent);
  return { list, quantity, discount, net, tax, total: net.plus(tax) };
};
