import { parseSlotPath, type SlotName, slotNames, type SlotPath, slotPath, slots } from '@flangewise/model';
import type { DrawingModel, DrawnSet } from './drawing-model.js';
import type { SceneSlot } from './scene.js';

const titleOf = (slot: SlotName, shown: number, set: number | null): string =>
  shown > 1 && set !== null ? `${slots[slot].title}, set ${String(set + 1)}` : slots[slot].title;

/** Every chosen slot of the frame and of the shown sets, with its state. */
export const sceneSlotsOf = (model: DrawingModel, shown: readonly DrawnSet[]): SceneSlot[] => {
  const paths: SlotPath[] = slotNames.flatMap((slot) =>
    slots[slot].place === 'frame' ? [slotPath(slot)] : shown.map(({ index }) => slotPath(slot, index)),
  );
  return paths.flatMap((path): SceneSlot[] => {
    const name = model.names[path];
    const parsed = parseSlotPath(path);
    if (name === undefined || parsed === undefined) return [];
    const verdict = model.verdicts[path];
    const set = parsed.set ?? null;
    return [
      {
        path,
        title: titleOf(parsed.slot, shown.length, set),
        name,
        set,
        status: verdict?.status ?? null,
        text: verdict?.text ?? null,
      },
    ];
  });
};
