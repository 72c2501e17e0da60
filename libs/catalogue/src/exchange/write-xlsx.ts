import {
  type Catalogue,
  type Cell,
  cellOf,
  type Item,
  leavesOf,
  type SlotName,
  slotNames,
} from '@flangewise/model';
import writeExcelFile from 'write-excel-file/node';
import { itemsOfSlot } from '../find-items.js';
import { columnsOf, numberHead } from './item-columns.js';
import { priceCell, priceHead } from './price-column.js';
import { priceSheet, sheetOf } from './workbook.js';

const headCell = (head: string) => ({
  value: head,
  fontWeight: 'bold' as const,
  bottomBorderStyle: 'medium' as const,
});

const dataCell = (cell: Cell) => {
  if (cell === null || cell === '') return null;
  if (typeof cell === 'number') return { value: cell, type: Number };
  return typeof cell === 'boolean' ? { value: cell, type: Boolean } : { value: cell, type: String };
};

interface SheetData {
  readonly sheet: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

const itemSheet = (slot: SlotName, items: readonly Item[]): SheetData => {
  const columns = columnsOf(slot, items);
  const placeOf = new Map(columns.map(({ path }, i) => [path, i]));
  const rows = items.map((item) => {
    const cells = Array.from<Cell>({ length: columns.length }).fill(null);
    for (const [path, { field, value }] of leavesOf(item)) {
      const place = placeOf.get(path);
      if (place !== undefined) cells[place] = cellOf(field, value);
    }
    return cells;
  });
  return { sheet: sheetOf(slot), heads: columns.map(({ head }) => head), rows };
};

const pricesSheet = ({ items, priceLists }: Catalogue): SheetData => ({
  sheet: priceSheet,
  heads: [numberHead, 'name', ...priceLists.map(priceHead)],
  rows: items.map(({ id, name }) => [
    id,
    name,
    ...priceLists.map(({ prices }) => {
      const price = prices[id];
      return price === undefined ? null : priceCell(price);
    }),
  ]),
});

/** Signs that a column shows; the head always fits. */
const widthOf = (head: string, at: number, rows: SheetData['rows']): number => {
  const longest = rows.slice(0, 100).reduce((most, row) => Math.max(most, String(row[at] ?? '').length), 0);
  return Math.min(48, Math.max(head.length, longest) + 2);
};

/** A workbook: a sheet for each slot, numbers as numbers with their unit in the head, and a sheet of prices. */
export const writeXlsx = async (catalogue: Catalogue): Promise<Uint8Array> => {
  const sheets = [
    ...slotNames.map((slot) => itemSheet(slot, itemsOfSlot(catalogue, slot))),
    pricesSheet(catalogue),
  ].map(({ sheet, heads, rows }) => ({
    data: [heads.map(headCell), ...rows.map((row) => row.map(dataCell))],
    sheet,
    columns: heads.map((head, at) => ({ width: widthOf(head, at, rows) })),
    stickyRowsCount: 1,
    stickyColumnsCount: 2,
  }));
  return writeExcelFile(sheets).toBuffer();
};
