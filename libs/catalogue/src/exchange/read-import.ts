import type { Catalogue } from '@flangewise/model';
import type { ExchangeFormat } from './exchange-format.js';
import type { ImportReport, ImportTrouble } from './import-report.js';
import { refusedReport } from './merge.js';
import { readCsv } from './read-csv.js';
import { readJson } from './read-json.js';
import { readTables } from './read-tables.js';
import { readXlsx } from './read-xlsx.js';
import { TroubleLog } from './trouble-log.js';

/** Bytes of one file; a larger one is a slip. */
const mostBytes = 128 * 1024 * 1024;

const refused = (troubles: readonly ImportTrouble[]): ImportReport => {
  const log = new TroubleLog();
  for (const trouble of troubles) log.add(trouble);
  return refusedReport(0, log);
};

/**
 * What a file says about a catalogue: what it adds and changes, or everything that is in the way, line by line. It takes no item
 * out; one trouble, and there is no new catalogue.
 */
export const readImport = async (
  format: ExchangeFormat,
  bytes: Uint8Array,
  catalogue: Catalogue,
): Promise<ImportReport> => {
  if (bytes.length > mostBytes)
    return refused([
      {
        line: 1,
        column: '',
        given: `${String(Math.ceil(bytes.length / 1024 / 1024))} MiB`,
        message: `a file may have ${String(mostBytes / 1024 / 1024)} MiB; give it in parts`,
      },
    ]);
  switch (format) {
    case 'csv': {
      const table = readCsv(bytes);
      return table.ok ? readTables([table.value], catalogue) : refused([table.error]);
    }
    case 'xlsx': {
      const tables = await readXlsx(bytes);
      return tables.ok ? readTables(tables.value, catalogue) : refused(tables.error);
    }
    case 'json':
      return readJson(bytes, catalogue);
  }
};
