import { type Catalogue, type Cell, cellOf, cellText, leavesOf, slotNames, slots } from '@flangewise/model';
import { itemsOfSlot } from '../find-items.js';
import { guarded } from './guarded-text.js';
import { columnsOf, slotHead } from './item-columns.js';
import { priceHead } from './price-column.js';

/** Tells spreadsheets that the file is UTF-8. */
const byteOrderMark = '\uFEFF';

const field = (cell: Cell): string => {
  if (cell === null || typeof cell === 'number') return cellText(cell);
  const text = guarded(cellText(cell));
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

const line = (cells: readonly Cell[]): string => `${cells.map(field).join(',')}\r\n`;

/**
 * All items as one table of comma-separated values: slot, every attribute with its unit in the head, a price of each list.
 *
 * @source RFC 4180
 */
export const writeCsv = (catalogue: Catalogue): string => {
  const ofSlots = slotNames.map((slot) => {
    const items = itemsOfSlot(catalogue, slot);
    return { slot, items, columns: columnsOf(slot, items) };
  });
  const heads = [...new Set(ofSlots.flatMap(({ columns }) => columns.map(({ head }) => head)))];
  const placeOf = new Map(heads.map((head, i) => [head, i]));
  const { priceLists } = catalogue;
  const rows = ofSlots.flatMap(({ slot, items, columns }) => {
    const places = new Map(columns.map(({ path, head }) => [path, placeOf.get(head) ?? 0]));
    return items.map((item) => {
      const cells = Array.from<Cell>({ length: heads.length }).fill(null);
      for (const [path, leaf] of leavesOf(item)) {
        const place = places.get(path);
        if (place !== undefined) cells[place] = cellOf(leaf.field, leaf.value);
      }
      return line([slots[slot].title, ...cells, ...priceLists.map(({ prices }) => prices[item.id] ?? null)]);
    });
  });
  return byteOrderMark + line([slotHead, ...heads, ...priceLists.map(priceHead)]) + rows.join('');
};
