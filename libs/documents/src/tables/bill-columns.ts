import type { BillRow } from '../views/bill-view.js';

/** One column of the bill of materials, for every table that is made of it. */
export interface BillColumn {
  readonly header: string;
  readonly width: number;
  readonly value: (row: BillRow) => string | number | null;
}

export const billColumns: readonly BillColumn[] = [
  { header: 'Position', width: 9, value: (row) => row.position },
  { header: 'Item', width: 11, value: (row) => row.item },
  { header: 'Name', width: 52, value: (row) => row.name },
  { header: 'Slot', width: 18, value: (row) => row.slot },
  { header: 'Place', width: 14, value: (row) => row.place },
  { header: 'Quantity', width: 9, value: (row) => row.quantity },
  { header: 'Wetted materials', width: 26, value: (row) => row.wetted },
  { header: 'Mass each [kg]', width: 14, value: (row) => row.massKg },
  { header: 'Lead time [working days]', width: 22, value: (row) => row.leadTimeDays },
  { header: 'Special', width: 9, value: (row) => (row.special ? 'special' : '') },
  { header: 'Note', width: 44, value: (row) => row.note },
];
