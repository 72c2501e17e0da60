import { fail, type Outcome, succeed } from '@flangewise/model';
import { CsvError, type Info, parse } from 'csv-parse/sync';
import { unguarded } from './guarded-text.js';
import type { ImportTrouble } from './import-report.js';
import type { Table } from './table.js';

/** What sets fields apart in files of different countries' spreadsheets. */
const delimiters = [',', ';', '\t'] as const;

/** The text of a file, its lines ended alike: UTF-8, or UTF-16 where the file begins with its mark. */
const textOf = (bytes: Uint8Array): string | undefined => {
  const [first, second] = bytes;
  const encoding =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes).replaceAll(/\r\n?/g, '\n');
  } catch {
    return undefined;
  }
};

const trouble = (line: number, given: string, message: string): ImportTrouble => ({
  line,
  column: '',
  given,
  message,
});

/** The mark that sets most heads of the first line apart. */
const delimiterOf = (text: string): string => {
  const head = text.slice(0, text.search(/\n|$/));
  const known = (delimiter: string): number => head.split(delimiter).length;
  return delimiters.reduce((best, one) => (known(one) > known(best) ? one : best));
};

/** A comma between digits, which cannot set thousands apart where a semicolon parts the fields. */
const decimalComma = /^(\s*[+-]?\d+),(\d+(?:e[+-]?\d+)?\s*)$/i;

/** Line ends within the fields of a line: it begins so many lines before it ends. */
const breaksIn = (record: readonly string[]): number =>
  record.reduce((sum, cell) => (cell.includes('\n') ? sum + cell.split('\n').length - 1 : sum), 0);

interface Line {
  readonly record: readonly string[];
  readonly info: Pick<Info, 'lines'>;
}

/**
 * Reads comma-separated values, or such as semicolons or tabs part.
 *
 * @source RFC 4180
 */
export const readCsv = (bytes: Uint8Array): Outcome<Table, ImportTrouble> => {
  const text = textOf(bytes);
  if (text === undefined)
    return fail(trouble(1, 'bytes that are no UTF-8', 'save the file as CSV in UTF-8 and choose it again'));
  if (text.trim() === '') return fail(trouble(1, 'nothing', emptyFile));
  const delimiter = delimiterOf(text);
  try {
    const lines = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
    }) as unknown as readonly Line[];
    const [head, ...rows] = lines;
    const plain = (cell: string): string =>
      unguarded(delimiter === ';' ? cell.replace(decimalComma, '$1.$2') : cell);
    return succeed({
      sheet: undefined,
      holds: undefined,
      head: (head?.record ?? []).map((one) => one.trim()),
      rows: rows.map(({ record, info }) => ({
        line: info.lines - breaksIn(record),
        cells: record.map(plain),
      })),
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const { lines } = error as unknown as { readonly lines?: number };
    return fail(trouble(lines ?? 1, 'a line that cannot be read', quotes));
  }
};

const emptyFile = 'the file is empty; give a head and a line for each item, as an export has them';
const quotes =
  'a quotation mark stands where none may; put fields that hold one into quotation marks and double it inside';
