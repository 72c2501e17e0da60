import { type Choices, type Item, type SlotName, slots, type System } from '@flangewise/model';

/** The part in a slot of one set: an item, null for none, undefined while nobody has chosen one of the range. */
export type Chosen = (slot: SlotName) => Item | null | undefined;

const choicesAt = (system: System, slot: SlotName, set: number): Choices =>
  slots[slot].place === 'frame' ? system.frame : (system.sets[set]?.choices ?? {});

export const chosenIn =
  (system: System, set: number, items: ReadonlyMap<string, Item>): Chosen =>
  (slot) => {
    const id = choicesAt(system, slot, set)[slot];
    if (id === undefined || id === null) return id;
    const item = items.get(id);
    return item?.slot === slot ? item : undefined;
  };
