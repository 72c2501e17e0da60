import {
  type Catalogue,
  frameSlots,
  type Item,
  setSlots,
  type SlotName,
  type SlotPath,
  slotPath,
  slots,
} from '@flangewise/model';

/** A choice to be made: one slot at one place, and what may stand there. null means none. */
export interface SlotVariable {
  readonly path: SlotPath;
  readonly slot: SlotName;
  /** Undefined for the frame. */
  readonly set?: number;
  readonly options: readonly (Item | null)[];
}

/** Items that may be offered anew. */
const isOffered = (item: Item): boolean => item.life !== 'discontinued';

/** Options of every slot: first "none" where a slot may be empty, then the items in the order of the range. */
export const slotVariables = (
  catalogue: Pick<Catalogue, 'items'>,
  setCount: number,
): readonly SlotVariable[] => {
  const bySlot = new Map<SlotName, Item[]>();
  for (const item of catalogue.items) {
    if (!isOffered(item)) continue;
    const list = bySlot.get(item.slot);
    if (list === undefined) bySlot.set(item.slot, [item]);
    else list.push(item);
  }
  const options = (slot: SlotName): readonly (Item | null)[] => {
    const items = bySlot.get(slot) ?? [];
    return slots[slot].optional ? [null, ...items] : items;
  };
  const inSets = Array.from({ length: setCount }, (_, set) =>
    setSlots.map((slot): SlotVariable => ({ path: slotPath(slot, set), slot, set, options: options(slot) })),
  );
  const onFrame = frameSlots.map((slot): SlotVariable => ({
    path: slotPath(slot),
    slot,
    options: options(slot),
  }));
  return [...inSets.flat(), ...onFrame];
};
