import { padded, paddedLeft, plain, widthOf } from './plain.js';
import { wrap } from './wrap.js';

export interface Column {
  readonly title: string;
  readonly align?: 'right';
}

const gap = '  ';

const line = (cells: readonly string[]): string => `${gap}${cells.join(gap)}`.trimEnd();

/**
 * Rows in aligned columns under their titles, indented by two. The last column takes what is left of the line and
 * breaks between words; a table without titles has none above it.
 */
export const table = (
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string => {
  const texts = rows.map((row) => columns.map((_, k) => plain(row[k] ?? '')));
  const last = columns.length - 1;
  const widths = columns.map(({ title }, k) =>
    Math.max(widthOf(title), ...texts.map((row) => widthOf(row[k] ?? ''))),
  );
  const before = widths.slice(0, last).reduce((sum, w) => sum + w + gap.length, gap.length);
  const cell = (text: string, k: number): string =>
    columns[k]?.align === 'right'
      ? paddedLeft(text, widths[k] ?? 0)
      : k === last
        ? text
        : padded(text, widths[k] ?? 0);
  const body = texts.flatMap((row) => {
    const lastText = row[last] ?? '';
    const [first = '', ...rest] =
      columns[last]?.align === 'right' ? [lastText] : wrap(lastText, width - before);
    return [
      line([...row.slice(0, last).map(cell), cell(first, last)]),
      ...rest.map((part) => `${' '.repeat(before)}${part}`),
    ];
  });
  const titled = columns.some(({ title }) => title !== '');
  const head = titled ? [line(columns.map(({ title }, k) => cell(title, k)))] : [];
  return [...head, ...body].join('\n');
};
