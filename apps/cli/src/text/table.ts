import { padded, paddedLeft, plain, widthOf } from './plain.js';
import { narrowest, wrap } from './wrap.js';

export interface Column {
  readonly title: string;
  readonly align?: 'right';
}

const gap = '  ';

const longestWord = (text: string): number => Math.max(...text.split(/\s+/).map((word) => widthOf(word)));

const line = (cells: readonly string[]): string => `${gap}${cells.join(gap)}`.trimEnd();

/** Widths of the columns: as wide as their texts, and where that is too much the widest give way, numbers never. */
const fittedWidths = (
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly number[] => {
  const widths = columns.map(({ title }, k) =>
    Math.max(widthOf(title), ...rows.map((row) => widthOf(row[k] ?? ''))),
  );
  const least = columns.map((_, k) => Math.max(narrowest, ...rows.map((row) => longestWord(row[k] ?? ''))));
  const tooMuch = (): number => widths.reduce((sum, w) => sum + w + gap.length, 0) - width;
  const canGive = (k: number): boolean => columns[k]?.align !== 'right' && (widths[k] ?? 0) > (least[k] ?? 0);
  while (tooMuch() > 0) {
    const widest = widths.reduce<number | undefined>(
      (most, w, k) => (canGive(k) && (most === undefined || w > (widths[most] ?? 0)) ? k : most),
      undefined,
    );
    if (widest === undefined) break;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
};

/**
 * Rows in aligned columns under their titles, indented by two. Texts too long for the width break between words within
 * their column; a table without titles has none above it.
 */
export const table = (
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string => {
  const texts = rows.map((row) => columns.map((_, k) => plain(row[k] ?? '')));
  const widths = fittedWidths(columns, texts, width);
  const cell = (text: string, k: number): string =>
    columns[k]?.align === 'right' ? paddedLeft(text, widths[k] ?? 0) : padded(text, widths[k] ?? 0);
  const body = texts.flatMap((row) => {
    const cells = row.map((text, k) => (columns[k]?.align === 'right' ? [text] : wrap(text, widths[k] ?? 0)));
    const height = Math.max(1, ...cells.map((lines) => lines.length));
    return Array.from({ length: height }, (_, at) => line(cells.map((lines, k) => cell(lines[at] ?? '', k))));
  });
  const titled = columns.some(({ title }) => title !== '');
  const head = titled ? [line(columns.map(({ title }, k) => cell(title, k)))] : [];
  return [...head, ...body].join('\n');
};
