import { type SlotName, slotNames } from '@flangewise/model';
import type { Part, PartGroup } from './find-parts';

/** A line of the table: the head of a slot, or a part below it. */
export type RangeRow =
  | { readonly is: 'slot'; readonly slot: SlotName; readonly count: number }
  | { readonly is: 'part'; readonly part: Part };

export const rangeRows = (groups: readonly PartGroup[]): readonly RangeRow[] =>
  groups.flatMap(({ slot, parts }) => [
    { is: 'slot' as const, slot, count: parts.length },
    ...parts.map((part) => ({ is: 'part' as const, part })),
  ]);

export const isSlotName = (value: string): value is SlotName => slotNames.some((name) => name === value);
