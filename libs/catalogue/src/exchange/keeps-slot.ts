import { type Item, slots } from '@flangewise/model';

/** Why an item of this number cannot stand in another slot. */
export const keepsSlot = ({ id, slot }: Item): string =>
  `${id} stands in the slot ${slots[slot].title} and stays there; give the new item another number`;
