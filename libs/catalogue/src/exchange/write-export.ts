import type { Catalogue } from '@flangewise/model';
import type { ExchangeFormat } from './exchange-format.js';
import { writeCsv } from './write-csv.js';
import { writeXlsx } from './write-xlsx.js';

export const exchangeMediaTypes: Readonly<Record<ExchangeFormat, string>> = {
  csv: 'text/csv; charset=utf-8; header=present',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  json: 'application/json',
};

/** A catalogue as a file that `readImport` reads back. */
export const writeExport = async (format: ExchangeFormat, catalogue: Catalogue): Promise<Uint8Array> => {
  switch (format) {
    case 'csv':
      return new TextEncoder().encode(writeCsv(catalogue));
    case 'xlsx':
      return writeXlsx(catalogue);
    case 'json':
      return new TextEncoder().encode(`${JSON.stringify(catalogue, null, 2)}\n`);
  }
};
