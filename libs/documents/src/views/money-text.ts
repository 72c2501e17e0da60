import { thinSpace } from '@flangewise/quantities';

const signs: Readonly<Record<string, string>> = { EUR: '€', GBP: '£', USD: 'US$', CHF: 'CHF' };

/** Whether every amount is a whole one, so that a table can leave the cents out. */
export const areWhole = (amounts: readonly string[]): boolean =>
  amounts.every((amount) => /^-?\d+(\.00)?$/.test(amount));

/**
 * An amount in text for people: `46380.00` → "46 380 €". Digits are never computed, only set apart.
 * Cents are left out where `whole` says that no amount of the table has any.
 */
export const moneyText = (amount: string, currency: string, whole: boolean): string => {
  const [units = '0', cents = '00'] = amount.replace('-', '').split('.');
  const grouped = units.length > 4 ? units.replace(/\B(?=(\d{3})+(?!\d))/g, thinSpace) : units;
  const minus = amount.startsWith('-') ? '−' : '';
  return `${minus}${grouped}${whole ? '' : `.${cents}`}${thinSpace}${signs[currency] ?? currency}`;
};
