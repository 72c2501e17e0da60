import { formatNumber, thinSpace } from '@flangewise/quantities';

/** What is left of the limit of the tightest check, rounded down: the safe side. */
export const marginText = (share: number): string => `${formatNumber(share * 100, 2, 'down')}${thinSpace}%`;

export const weeksText = (weeks: number): string => `${String(weeks)}${thinSpace}wk`;
