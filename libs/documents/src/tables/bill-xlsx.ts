import writeExcelFile from 'write-excel-file/node';
import type { BillView } from '../views/bill-view.js';
import { billColumns } from './bill-columns.js';
import { undatedZip } from './undated-zip.js';

const headerCell = (header: string) => ({
  value: header,
  fontWeight: 'bold' as const,
  bottomBorderStyle: 'medium' as const,
});

/** A name that a workbook takes for a sheet: at most 31 signs, none of : \ / ? * [ ]. */
const sheetName = (document: string): string => document.replace(/[:\\/?*[\]]/g, '-').slice(0, 31) || 'Bill';

/** The bill of materials as a workbook: one sheet, numbers as numbers, text never a formula, header row held in view. */
export const billXlsx = async ({ document, rows }: BillView): Promise<Uint8Array> => {
  const data = [
    billColumns.map(({ header }) => headerCell(header)),
    ...rows.map((row) =>
      billColumns.map(({ value }) => {
        const content = value(row);
        if (content === null || content === '') return null;
        return typeof content === 'number'
          ? { value: content, type: Number }
          : { value: content, type: String };
      }),
    ),
  ];
  const columns = billColumns.map(({ width }) => ({ width }));
  const sheet = sheetName(document);
  return undatedZip(await writeExcelFile(data, { sheet, columns, stickyRowsCount: 1 }).toBuffer());
};
