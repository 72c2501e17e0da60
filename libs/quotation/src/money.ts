import { Decimal } from 'decimal.js';

/**
 * Amounts of money, exact. Configured once, here: 40 digits, so that a product of any two amounts of an offer is
 * exact, and commercial rounding (half away from zero) where `toCents` asks for it.
 */
export const Money = Decimal.clone({ precision: 40, rounding: Decimal.ROUND_HALF_UP, toExpPos: 40 });
export type Money = Decimal;

/** An amount to two decimals, half away from zero: the only rounding in an offer. */
export const toCents = (amount: Money): Money => amount.toDecimalPlaces(2, Decimal.ROUND_HALF_UP);

/** A share of an amount given in percent, to two decimals, half away from zero. */
export const percentOf = (amount: Money, percent: Money): Money => toCents(amount.times(percent).div(100));

export const sumOf = (amounts: readonly Money[]): Money =>
  amounts.reduce((sum, next) => sum.plus(next), new Money(0));

/** `1234.50`: as JSON carries amounts. */
export const moneyText = (amount: Money): string => amount.toFixed(2);
