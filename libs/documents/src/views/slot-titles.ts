import { parseSlotPath, slots } from '@flangewise/model';

/** What the slots at these paths are called, each once. */
export const slotTitles = (paths: readonly string[]): string =>
  [
    ...new Set(
      paths.flatMap((path) => {
        const parsed = parseSlotPath(path);
        return parsed === undefined ? [] : [slots[parsed.slot].title];
      }),
    ),
  ].join(', ');
