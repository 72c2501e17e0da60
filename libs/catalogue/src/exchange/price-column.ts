import type { PriceList } from '@flangewise/model';

/** Head of the column of a price list. */
export const priceHead = ({ id, currency }: PriceList): string => `price ${id} [${currency}]`;

export const isPriceHead = (head: string): boolean => /^price\s/i.test(head.trim());

/** A price as tables hold it: a number, or text where zeros at its end would be lost. */
export const priceCell = (price: string): string | number => (/\.\d?0$/.test(price) ? price : Number(price));
