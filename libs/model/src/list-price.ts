import { readNumber } from '@flangewise/quantities';
import type { PriceList } from './item.js';

/** What may stand where the list price of an item is written. */
export const allowedPrice = ({ currency }: Pick<PriceList, 'currency'>): string =>
  `give an amount in ${currency} of at least 0, whole or with two decimals, or nothing where it has no list price`;

const amountText = (value: number): string | undefined => {
  if (!Number.isFinite(value) || value < 0 || value > Number.MAX_SAFE_INTEGER / 100) return undefined;
  if (Number.isInteger(value)) return String(value);
  const text = value.toFixed(2);
  return Number(text) === value ? text : undefined;
};

/** A written price as price lists hold it; undefined for what is none. */
export const readPrice = (cell: string | number | boolean): string | undefined => {
  if (typeof cell === 'boolean') return undefined;
  if (typeof cell === 'number') return amountText(cell);
  const text = cell.trim();
  if (/^\d+(\.\d{2})?$/.test(text)) return text;
  const read = readNumber(text);
  return read.as === 'number' && read.rest === '' ? amountText(read.value) : undefined;
};
