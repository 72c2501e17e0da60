import type { Catalogue } from '@flangewise/model';
import type { ImportReport } from './import-report.js';
import { mergedReport, refusedReport } from './merge.js';
import { type Gathered, RowReader } from './read-rows.js';
import type { Table } from './table.js';
import { TroubleLog } from './trouble-log.js';

/** Items of one file; a larger one is a slip. */
const mostRows = 200_000;

/** What tables of items and prices say about a catalogue. */
export const readTables = (tables: readonly Table[], catalogue: Catalogue): ImportReport => {
  const log = new TroubleLog();
  const total = tables.reduce((sum, { rows }) => sum + rows.length, 0);
  if (total > mostRows) {
    log.add({
      line: 1,
      column: '',
      given: `${String(total)} lines`,
      message: `a file may hold ${String(mostRows)} lines; give it in parts`,
    });
    return refusedReport(0, log);
  }
  const gathered: Gathered = { items: new Map(), prices: new Map(), places: new Map() };
  // Prices come last: they may be of items that the file adds.
  const inOrder = [...tables].sort((a, b) => Number(a.holds === 'prices') - Number(b.holds === 'prices'));
  const rows = inOrder.reduce(
    (sum, table) => sum + new RowReader(table, { catalogue, gathered, log }).read(),
    0,
  );
  if (!log.isEmpty) return refusedReport(rows, log);
  return { ...mergedReport(catalogue, { incoming: gathered, log }), rows };
};
