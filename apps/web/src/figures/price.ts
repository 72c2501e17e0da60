import { thinSpace } from '@flangewise/quantities';

const signs: Readonly<Record<string, string>> = { EUR: '€', GBP: '£', USD: '$', CHF: 'CHF' };

const grouped = (whole: string): string => whole.replace(/\B(?=(\d{3})+(?!\d))/g, thinSpace);

/** The sign or code of a currency as it stands after an amount. */
export const currencySign = (currency: string): string => signs[currency] ?? currency;

/** An amount to one unit of the currency: "46190.00" → "46 190 €". */
export const priceText = (amount: string | number, currency: string): string => {
  const value = Math.round(Number(amount));
  return `${value < 0 ? '−' : ''}${grouped(String(Math.abs(value)))}${thinSpace}${currencySign(currency)}`;
};

/** An amount with its cents, as it stands in an offer; no digit is lost. */
export const exactPriceText = (amount: string, currency: string): string => {
  const [whole = '0', cents = '00'] = amount.replace('-', '').split('.');
  return `${amount.startsWith('-') ? '−' : ''}${grouped(whole)}.${cents}${thinSpace}${currencySign(currency)}`;
};

const signOf = (value: number): string => (value > 0 ? '+' : value < 0 ? '−' : '±');

/** A difference carries its sign, ±0 included. */
export const priceDifferenceText = (amount: number, currency: string): string => {
  const value = Math.round(amount);
  return `${signOf(value)}${grouped(String(Math.abs(value)))}${thinSpace}${currencySign(currency)}`;
};

/** Working days more or fewer. */
export const daysDifferenceText = (days: number): string =>
  `${signOf(days)}${String(Math.abs(days))}${thinSpace}d`;
