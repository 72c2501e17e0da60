import { type SlotPath, slotPath } from '@flangewise/model';
import type { DrawingModel } from './drawing-model.js';
import { placeAnchors } from './place-anchors.js';
import { sceneSlotsOf } from './scene-slots.js';
import { sectionOf } from './section.js';

/**
 * One number for every chosen slot of a system, the same on screen and on paper: the sections of its sets one after
 * the other, each down its left and then its right side, then what is not drawn, materials last.
 */
export const numberSystem = (model: DrawingModel): ReadonlyMap<SlotPath, number> => {
  const drawn = model.sets.flatMap(({ index }) => {
    const section = sectionOf(model, { set: index });
    return section === undefined ? [] : placeAnchors(section).map(({ path }) => path);
  });
  const materials = new Set(model.sets.map(({ index }) => slotPath('material', index)));
  const rest = sceneSlotsOf(model, model.sets)
    .map(({ path }) => path)
    .toSorted((a, b) => Number(materials.has(a)) - Number(materials.has(b)));
  return new Map([...new Set([...drawn, ...rest])].map((path, i) => [path, i + 1]));
};
