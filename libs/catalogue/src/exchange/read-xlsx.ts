import { type Cell, fail, nearestName, type Outcome, succeed } from '@flangewise/model';
import readXlsxFile, { InvalidInputError, InvalidSpreadsheetError } from 'read-excel-file/node';
import type { ImportTrouble } from './import-report.js';
import type { Table } from './table.js';
import { heldBy, sheetNames } from './workbook.js';

const trouble = (given: string, message: string): ImportTrouble => ({ line: 1, column: '', given, message });

const two = (value: number): string => String(value).padStart(2, '0');

/** A cell as tables have it: a date of a workbook is the day of a calendar, "2026-11-30". */
const cellIn = (value: unknown): Cell => {
  if (value instanceof Date)
    return `${String(value.getUTCFullYear())}-${two(value.getUTCMonth() + 1)}-${two(value.getUTCDate())}`;
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : null;
};

const wrongSheet = (sheet: string): ImportTrouble => {
  const meant = nearestName(sheet, sheetNames);
  return {
    sheet,
    ...trouble(
      sheet,
      `there is no such sheet; ${meant === undefined ? '' : `was "${meant}" meant? `}Sheets are ${sheetNames.join(', ')}`,
    ),
  };
};

const noWorkbook = trouble('a file that is no workbook', 'save it as an XLSX workbook and choose it again');

/** Reads the sheets of a workbook; all sheets that no export has are told at once. */
export const readXlsx = async (
  bytes: Uint8Array,
): Promise<Outcome<readonly Table[], readonly ImportTrouble[]>> => {
  if (bytes.length === 0)
    return fail([trouble('nothing', 'the file is empty; give a workbook as an export has it')]);
  let sheets;
  try {
    sheets = await readXlsxFile(Buffer.from(bytes));
  } catch (error) {
    if (error instanceof InvalidInputError || error instanceof InvalidSpreadsheetError)
      return fail([noWorkbook]);
    throw error;
  }
  const written = sheets.filter(({ data }) => data.length > 0);
  const strangers = written.filter(({ sheet }) => heldBy(sheet) === undefined);
  if (strangers.length > 0) return fail(strangers.map(({ sheet }) => wrongSheet(sheet)));
  return succeed(
    written.map(({ sheet, data: [head = [], ...rows] }) => ({
      sheet,
      holds: heldBy(sheet),
      head: head.map((value) => String(cellIn(value) ?? '').trim()),
      rows: rows.map((row, i) => ({ line: i + 2, cells: row.map(cellIn) })),
    })),
  );
};
