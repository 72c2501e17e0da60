import type { LeastMargin } from '@flangewise/model';

/** A share as whole percent, rounded down: what is left is never shown larger than it is. */
const percentDown = (share: number): string => `${String(Math.floor(share * 100 + 1e-9))} %`;

/** What is left at the tightest check. */
export const marginText = (margin: LeastMargin | null): string =>
  margin === null ? 'nothing to compare' : `${percentDown(margin.value)} left: ${margin.title}`;

/** How much of a limit is used, rounded up; empty where nothing is compared. */
export const usedText = (utilisation: number | undefined): string =>
  utilisation === undefined ? '' : `${String(Math.ceil(utilisation * 100 - 1e-9))} %`;

/** `69160.00` → `69 160`; amounts side by side all show cents as soon as one of them has any. */
export const moneyTexts = (amounts: readonly string[]): readonly string[] => {
  const isWhole = amounts.every((amount) => /^-?\d+(\.00)?$/.test(amount));
  return amounts.map((amount) => {
    const [whole = '0', cents = '00'] = amount.split('.');
    const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ' ');
    return isWhole ? grouped : `${grouped}.${cents}`;
  });
};

export const moneyText = (amount: string): string => moneyTexts([amount])[0] ?? '';

export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${String(count)} ${count === 1 ? one : many}`;
