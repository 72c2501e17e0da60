import { type SlotName, slotNames, slots } from '@flangewise/model';

/** Sheet of the prices of all lists. */
export const priceSheet = 'Prices';

/** Sheet of the items of a slot. */
export const sheetOf = (slot: SlotName): string => slots[slot].title;

/** What a sheet holds; undefined for one that no export has. */
export const heldBy = (sheet: string): SlotName | 'prices' | undefined => {
  const name = sheet.trim().toLowerCase();
  if (name === priceSheet.toLowerCase()) return 'prices';
  return slotNames.find((slot) => sheetOf(slot).toLowerCase() === name);
};

export const sheetNames: readonly string[] = [...slotNames.map(sheetOf), priceSheet];
