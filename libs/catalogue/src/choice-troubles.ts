import {
  type Choices,
  frameSlots,
  type Item,
  setSlots,
  type SlotName,
  type SlotPath,
  slotPath,
  slots,
  type System,
} from '@flangewise/model';

/** A choice that the range cannot follow: where, what was given, what is allowed. */
export interface ChoiceTrouble {
  readonly code: 'UNKNOWN_ITEM' | 'WRONG_SLOT' | 'ITEM_WITHDRAWN' | 'SLOT_EMPTY';
  readonly path: SlotPath;
  readonly given: string;
  readonly message: string;
}

/** Numbers that a message lists; more would hide what it says. */
const mostListed = 12;

const listed = (slot: SlotName, items: ReadonlyMap<string, Item>): string => {
  const ids = [...items.values()]
    .filter((item) => item.slot === slot && item.life !== 'discontinued')
    .map((item) => item.id);
  const rest = ids.length - mostListed;
  const shown = ids.slice(0, mostListed).join(', ');
  const none = slots[slot].optional ? ', or null for none' : '';
  return `${slots[slot].title} may be ${rest > 0 ? `${shown} and ${String(rest)} more` : shown}${none}`;
};

const troubleOf = (
  slot: SlotName,
  chosen: string | null,
  items: ReadonlyMap<string, Item>,
): Omit<ChoiceTrouble, 'path'> | undefined => {
  if (chosen === null) {
    return slots[slot].optional
      ? undefined
      : {
          code: 'SLOT_EMPTY',
          given: 'null',
          message: `may not be empty; ${listed(slot, items)}, or leave it out while nobody has chosen`,
        };
  }
  const item = items.get(chosen);
  if (item === undefined)
    return {
      code: 'UNKNOWN_ITEM',
      given: chosen,
      message: `the range has no such item; ${listed(slot, items)}`,
    };
  if (item.slot !== slot)
    return {
      code: 'WRONG_SLOT',
      given: chosen,
      message: `${item.name} belongs to ${slots[item.slot].title}; ${listed(slot, items)}`,
    };
  return item.life === 'discontinued'
    ? {
        code: 'ITEM_WITHDRAWN',
        given: chosen,
        message: `${item.name} is no longer made; ${listed(slot, items)}`,
      }
    : undefined;
};

/** Choices that the range cannot follow: unknown or withdrawn items, items of another slot, slots emptied that may not be. */
export const choiceTroubles = (
  system: Pick<System, 'frame' | 'sets'>,
  items: ReadonlyMap<string, Item>,
): readonly ChoiceTrouble[] => {
  const at = (choices: Choices, names: readonly SlotName[], set?: number): readonly ChoiceTrouble[] =>
    names.flatMap((slot) => {
      const chosen = choices[slot];
      if (chosen === undefined) return [];
      const trouble = troubleOf(slot, chosen, items);
      return trouble === undefined ? [] : [{ ...trouble, path: slotPath(slot, set) }];
    });
  return [
    ...at(system.frame, frameSlots),
    ...system.sets.flatMap(({ choices }, set) => at(choices, setSlots, set)),
  ];
};
