import type { Cell, SlotName } from '@flangewise/model';

export interface TableRow {
  /** Line of the file or sheet, from 1. */
  readonly line: number;
  readonly cells: readonly Cell[];
}

/** Lines under a head, from whatever file. */
export interface Table {
  /** Name of the sheet; undefined where the file has none. */
  readonly sheet: string | undefined;
  /** `prices` has prices only; undefined where a column says the slot. */
  readonly holds: SlotName | 'prices' | undefined;
  readonly head: readonly string[];
  readonly rows: readonly TableRow[];
}
