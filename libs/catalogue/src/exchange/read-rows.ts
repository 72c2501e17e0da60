import {
  allowedPrice,
  allowedText,
  type Catalogue,
  type Cell,
  isBlankCell,
  type Item,
  itemOfLeaves,
  itemSchema,
  leavesOf,
  itemFieldsOf,
  nearestName,
  pathText,
  readCell,
  readPrice,
  type SlotName,
  slotNames,
  slots,
  templateOf,
} from '@flangewise/model';
import { itemById } from '../find-items.js';
import { headOf, numberHead, slotHead } from './item-columns.js';
import { keepsSlot } from './keeps-slot.js';
import { type ColumnMeaning, meaningOf } from './read-head.js';
import type { Table, TableRow } from './table.js';
import type { TroubleLog } from './trouble-log.js';

/** What has been read so far, from this table and those before it. */
export interface Gathered {
  /** Items of the file, by number, in its order. */
  readonly items: Map<string, Item>;
  /** Prices of the file by list and item; null for none. */
  readonly prices: Map<string, Map<string, string | null>>;
  /** Where each number was read first. */
  readonly places: Map<string, string>;
}

interface Column {
  readonly head: string;
  readonly meaning: ColumnMeaning;
}

/** What a table says of the items of one slot. */
interface SlotPaths {
  readonly paths: ReadonlySet<string>;
  /** Lists of which it has at least one part. */
  readonly lists: ReadonlySet<string>;
  /** Whether it has a column for every field. */
  readonly areAll: boolean;
}

const slotOf = (cell: Cell): SlotName | undefined => {
  const text = String(cell).trim().toLowerCase();
  return slotNames.find((name) => name.toLowerCase() === text || slots[name].title.toLowerCase() === text);
};

const listPath = (path: string): string | undefined => /^(.*?)\[/.exec(path)?.[1];

/** Reads the lines of one table into what has been gathered. */
export class RowReader {
  readonly #columns: readonly Column[];
  readonly #numberAt: number;
  readonly #slotAt: number;
  /** Columns that new items were found to lack, so that each is told once. */
  readonly #missed = new Set<string>();
  #isHeadSound = true;
  readonly #paths = new Map<SlotName, SlotPaths>();

  constructor(
    readonly table: Table,
    readonly into: { readonly catalogue: Catalogue; readonly gathered: Gathered; readonly log: TroubleLog },
  ) {
    const { priceLists } = into.catalogue;
    this.#columns = table.head.map((head) => ({
      head,
      meaning: meaningOf(head, { holds: table.holds, priceLists }),
    }));
    this.#numberAt = table.head.findIndex((head) => head.trim().toLowerCase() === numberHead);
    this.#slotAt = this.#columns.findIndex(({ meaning }) => meaning.is === 'slot');
  }

  /** Items that the table holds. */
  read(): number {
    if (!this.#checkHead()) return 0;
    const rows = this.table.rows.filter(({ cells }) => cells.some((cell) => !isBlankCell(cell)));
    for (const row of rows) this.#readRow(row);
    return this.table.holds === 'prices' ? 0 : rows.length;
  }

  #tell(line: number, column: string, [given, message]: readonly [unknown, string]): void {
    const { sheet } = this.table;
    this.into.log.add({ ...(sheet === undefined ? {} : { sheet }), line, column, given, message });
  }

  /** Tells what is wrong with the head; whether lines can be read all the same. */
  #checkHead(): boolean {
    if (this.#numberAt < 0)
      this.#tell(1, numberHead, [
        'nothing',
        `the column "${numberHead}" is missing; every line needs an item number`,
      ]);
    this.#columns.forEach(({ head, meaning }, at) => {
      const isEmpty = head === '' && this.table.rows.every(({ cells }) => isBlankCell(cells[at]));
      if (meaning.is === 'unknown' && !isEmpty) this.#tellHead(head, meaning.message);
      if (head !== '' && this.table.head.indexOf(head) !== at)
        this.#tellHead(head, 'the column stands here twice; take one of them out');
    });
    return this.#numberAt >= 0;
  }

  #tellHead(head: string, message: string): void {
    this.#isHeadSound = false;
    this.#tell(1, head, [head, message]);
  }

  #readRow(row: TableRow): void {
    const { line, cells } = row;
    const cell = cells[this.#numberAt] ?? null;
    if (isBlankCell(cell)) {
      this.#tell(line, numberHead, ['nothing', 'give the item number, a text like VS-1002']);
      return;
    }
    const id = String(cell).trim();
    if (this.table.holds !== 'prices') this.#readItem(row, id);
    else if (!this.#isFirst(line, id)) return;
    this.#readPrices(row, id);
  }

  #readItem(row: TableRow, id: string): void {
    const { line, cells } = row;
    if (!this.#isFirst(line, id)) return;
    const known = itemById(this.into.catalogue, id);
    const slot = this.#slotAtRow(row, known);
    if (slot === undefined) return;
    const leaves = new Map<string, unknown>();
    // What the table has a column for is not needed from before.
    if (known !== undefined && !this.#pathsOf(slot).areAll)
      for (const [path, { value }] of leavesOf(known)) leaves.set(path, value);
    if (!this.#readFields({ row, slot, leaves })) return;
    this.#finish({ id, slot, leaves, line, isNew: known === undefined, cells });
  }

  /** Whether no line before has this number; prices stand in lines of their own. */
  #isFirst(line: number, id: string): boolean {
    const { sheet, holds } = this.table;
    const { places } = this.into.gathered;
    const key = holds === 'prices' ? `price of ${id}` : id;
    const first = places.get(key);
    if (first === undefined) {
      places.set(key, `${sheet === undefined ? '' : `sheet ${sheet}, `}line ${String(line)}`);
      return true;
    }
    this.#tell(line, numberHead, [id, `the number stands in ${first} already; every item has one line`]);
    return false;
  }

  #slotAtRow({ line, cells }: TableRow, known: Item | undefined): SlotName | undefined {
    const { holds } = this.table;
    const cell = cells[this.#slotAt] ?? null;
    const said = isBlankCell(cell) ? undefined : slotOf(cell);
    if (!isBlankCell(cell) && said === undefined) {
      const titles = slotNames.map((name) => slots[name].title);
      const meant = nearestName(String(cell), titles);
      this.#tell(line, slotHead, [
        cell,
        `there is no such slot; ${meant === undefined ? '' : `was "${meant}" meant? `}Slots are ${titles.join(', ')}`,
      ]);
      return undefined;
    }
    const slot = said ?? (holds === 'prices' ? undefined : holds) ?? known?.slot;
    if (slot === undefined) this.#tell(line, slotHead, ['nothing', 'a new item needs its slot']);
    else if (known !== undefined && known.slot !== slot) {
      this.#tell(line, holds === undefined ? slotHead : numberHead, [slots[slot].title, keepsSlot(known)]);
      return undefined;
    }
    return slot;
  }

  /** Writes the cells of a line over what is known; whether all could be read. */
  #readFields({
    row: { line, cells },
    slot,
    leaves,
  }: {
    readonly row: TableRow;
    readonly slot: SlotName;
    readonly leaves: Map<string, unknown>;
  }): boolean {
    let usable = true;
    this.#clear(slot, leaves);
    this.#columns.forEach(({ head, meaning }, at) => {
      if (meaning.is !== 'field') return;
      const column = meaning.of.get(slot);
      const cell = cells[at] ?? null;
      if (column === undefined) {
        if (isBlankCell(cell)) return;
        usable = false;
        this.#tell(line, head, [
          cell,
          `items of the slot ${slots[slot].title} have no such field; leave it empty`,
        ]);
        return;
      }
      if (isBlankCell(cell) || cell === null) return;
      const read = readCell(column.field, cell);
      if (read.ok) leaves.set(column.path, read.value);
      else {
        usable = false;
        this.#tell(line, head, [cell, read.error]);
      }
    });
    return usable;
  }

  /** What the table has columns of is wholly that of the table: single fields, and all of several. */
  #clear(slot: SlotName, leaves: Map<string, unknown>): void {
    const { paths, lists } = this.#pathsOf(slot);
    for (const path of leaves.keys())
      if (paths.has(path) || lists.has(listPath(path) ?? '')) leaves.delete(path);
  }

  #pathsOf(slot: SlotName): SlotPaths {
    const known = this.#paths.get(slot);
    if (known !== undefined) return known;
    const paths = this.#columns.flatMap(({ meaning }) => {
      const path = meaning.is === 'field' ? meaning.of.get(slot)?.path : undefined;
      return path === undefined ? [] : [path];
    });
    const templates = new Set(['slot', ...paths.map(templateOf)]);
    const found = {
      paths: new Set(paths),
      lists: new Set(paths.flatMap((path) => listPath(path) ?? [])),
      areAll: itemFieldsOf(slot).every(({ path }) => templates.has(path)),
    };
    this.#paths.set(slot, found);
    return found;
  }

  #finish(line: {
    readonly id: string;
    readonly slot: SlotName;
    readonly leaves: ReadonlyMap<string, unknown>;
    readonly line: number;
    readonly isNew: boolean;
    readonly cells: readonly Cell[];
  }): void {
    const parsed = itemSchema.safeParse(itemOfLeaves(line.slot, line.leaves));
    if (parsed.success) {
      this.into.gathered.items.set(line.id, parsed.data);
      return;
    }
    for (const issue of parsed.error.issues) this.#tellIssue(issue, line);
  }

  #tellIssue(
    issue: { readonly path: readonly PropertyKey[]; readonly message: string },
    {
      slot,
      line,
      cells,
    }: { readonly slot: SlotName; readonly line: number; readonly cells: readonly Cell[] },
  ): void {
    const path = pathText(issue.path);
    const { field, at, head } = this.#columnAt(slot, path);
    if (field === undefined) {
      this.#tell(line, head, ['nothing', issue.message]);
      return;
    }
    if (at >= 0) {
      this.#tell(line, head, [cells[at] ?? null, `give ${allowedText(field)}`]);
      return;
    }
    // A column that is missing may be one that is headed wrongly, and that was told.
    if (!this.#isHeadSound || this.#missed.has(`${slot} ${head}`)) return;
    this.#missed.add(`${slot} ${head}`);
    this.#tell(line, head, [
      'nothing',
      `the column "${head}" is missing, and a new item of the slot ${slots[slot].title} needs it: ${allowedText(field)}`,
    ]);
  }

  #columnAt(slot: SlotName, path: string) {
    const at = this.#columns.findIndex(
      ({ meaning }) => meaning.is === 'field' && meaning.of.get(slot)?.path === path,
    );
    const column = this.#columns[at];
    const own = column?.meaning.is === 'field' ? column.meaning.of.get(slot)?.field : undefined;
    const field = own ?? itemFieldsOf(slot).find((one) => one.path === templateOf(path));
    return { field, at, head: column?.head ?? (field === undefined ? path : headOf(field, path)) };
  }

  #readPrices({ line, cells }: TableRow, id: string): void {
    const { gathered, catalogue } = this.into;
    this.#columns.forEach(({ head, meaning }, at) => {
      if (meaning.is !== 'price') return;
      const { list } = meaning;
      const cell = cells[at] ?? null;
      const price = cell === null || isBlankCell(cell) ? null : readPrice(cell);
      if (price === undefined) {
        this.#tell(line, head, [cell, allowedPrice(list)]);
        return;
      }
      if (price !== null && itemById(catalogue, id) === undefined && !gathered.items.has(id)) {
        if (this.table.holds === 'prices')
          this.#tell(line, numberHead, [id, 'there is no item of this number; add it before its price']);
        return;
      }
      const ofList = gathered.prices.get(list.id) ?? new Map<string, string | null>();
      gathered.prices.set(list.id, ofList.set(id, price));
    });
  }
}
