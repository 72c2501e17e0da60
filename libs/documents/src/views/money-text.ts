import { thinSpace } from '@flangewise/quantities';

const signs: Readonly<Record<string, string>> = { EUR: '€', GBP: '£', USD: '$', CHF: 'CHF' };

/** An amount in text for people, as on screen: `46380.00` → "46 380.00 €". Digits are never computed, only set apart. */
export const moneyText = (amount: string, currency: string): string => {
  const [units = '0', cents = '00'] = amount.replace('-', '').split('.');
  const grouped = units.replace(/\B(?=(\d{3})+(?!\d))/g, thinSpace);
  const minus = amount.startsWith('-') ? '−' : '';
  return `${minus}${grouped}.${cents}${thinSpace}${signs[currency] ?? currency}`;
};
