import readXlsxFile from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import { sampleOffer } from '../fixtures/sample-offer.js';
import { type BillRow, type BillView, billViewOf } from '../views/bill-view.js';
import { billColumns } from './bill-columns.js';
import { billCsv } from './bill-csv.js';
import { billXlsx } from './bill-xlsx.js';

const { offer, system, items } = sampleOffer();
const bill = billViewOf(offer, system, items);

const odd: BillRow = {
  position: 1,
  item: 'VS-1002',
  name: '=HYPERLINK("x"), "quoted"\nsecond line',
  slot: 'Vessel',
  place: 'set 1',
  quantity: 2,
  wetted: '1.4404',
  massKg: 0.199,
  leadTimeDays: null,
  special: true,
  note: '-1+1',
};
const oddBill: BillView = { document: '2417-C', title: 'odd', rows: [odd] };

describe('bill of materials as CSV', () => {
  it('starts with a byte order mark and ends every line with CR LF', () => {
    const csv = billCsv(bill);
    expect(csv.charCodeAt(0)).toBe(0xfeff);
    expect(csv.split('\r\n')).toHaveLength(bill.rows.length + 2);
    expect(csv.endsWith('\r\n')).toBe(true);
  });

  it('quotes as RFC 4180 asks and lets no text become a formula', () => {
    const line = billCsv(oddBill).split('\r\n')[1];
    expect(line).toBe(
      `1,VS-1002,"'=HYPERLINK(""x""), ""quoted""\nsecond line",Vessel,set 1,2,1.4404,0.199,,special,'-1+1`,
    );
  });

  it('carries no price', () => {
    expect(billCsv(bill)).not.toContain('1250');
  });
});

describe('bill of materials as workbook', () => {
  const read = async (view: BillView) => {
    const sheets = await readXlsxFile(Buffer.from(await billXlsx(view)));
    const [first] = sheets;
    return first!.data;
  };

  it('gives back what went in, numbers as numbers', async () => {
    const rows = await read(bill);
    expect(rows[0]).toEqual(billColumns.map(({ header }) => header));
    expect(rows).toHaveLength(bill.rows.length + 1);
    expect(rows[1]).toEqual(
      billColumns.map(({ value }) => (value(bill.rows[0]!) === '' ? null : value(bill.rows[0]!))),
    );
  });

  it('keeps a text that looks like a formula as text', async () => {
    const rows = await read(oddBill);
    expect(rows[1]?.[2]).toBe(odd.name);
  });

  it('is the same file every time', async () => {
    expect(Buffer.from(await billXlsx(bill)).equals(Buffer.from(await billXlsx(bill)))).toBe(true);
  });
});
