import type { BillView } from '../views/bill-view.js';
import { billColumns } from './bill-columns.js';
import { guardedText } from './guarded-text.js';

/** Tells spreadsheets that the file is UTF-8. */
const byteOrderMark = '\uFEFF';

const field = (value: string | number | null): string => {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const text = guardedText(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/**
 * The bill of materials as comma-separated values: header line, fields quoted where they must be, lines ended
 * with CR LF, UTF-8 with byte order mark, decimal points.
 *
 * @source RFC 4180
 */
export const billCsv = ({ rows }: BillView): string => {
  const lines = [
    billColumns.map(({ header }) => field(header)),
    ...rows.map((row) => billColumns.map(({ value }) => field(value(row)))),
  ];
  return byteOrderMark + lines.map((line) => `${line.join(',')}\r\n`).join('');
};
