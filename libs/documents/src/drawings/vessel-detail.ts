import { parseSlotPath, type SlotName } from '@flangewise/model';
import type { DrawingModel } from './drawing-model.js';
import type { Part, Scene } from './scene.js';
import { boundsOf } from './scene-bounds.js';
import { sectionOf } from './section.js';

/** What a detail of the vessel shows: the pressure envelope with everything inside it. */
export const detailSlots: ReadonlySet<SlotName> = new Set<SlotName>([
  'vessel',
  'closure',
  'cover',
  'seal',
  'stirrer',
  'shaft',
  'baffles',
  'coil',
  'heater',
  'temperatureProbe',
  'processProbe',
  'gasInlet',
  'sampling',
  'basket',
  'relief',
]);

const isShown = ({ slot, shapes }: Part): boolean => {
  const parsed = slot === null ? undefined : parseSlotPath(slot);
  if (slot !== null) return parsed !== undefined && detailSlots.has(parsed.slot);
  return shapes.some(
    ({ kind, ...shape }) =>
      kind === 'area' && 'fill' in shape && shape.fill !== 'solid' && shape.fill !== 'sheet',
  );
};

/** The vessel of one set without drive, coupling and stand: to be shown at a larger scale beside the whole. */
export const vesselDetailOf = (model: DrawingModel, set: number): Scene | undefined => {
  const scene = sectionOf({ ...model, frame: null, lift: null, drive: null }, { set });
  if (scene === undefined) return undefined;
  const parts = scene.parts.filter(isShown);
  const bounds = boundsOf(parts);
  return {
    ...scene,
    title: `vessel of ${scene.title}`,
    parts,
    bounds,
    slots: scene.slots.filter(({ path }) => {
      const parsed = parseSlotPath(path);
      return parsed !== undefined && detailSlots.has(parsed.slot);
    }),
    dimensions: scene.dimensions
      .filter(({ of }) => of === 'vessel')
      .map((dimension) =>
        dimension.kind === 'vertical'
          ? dimension
          : { ...dimension, at: bounds.bottom + 0.05 * (bounds.bottom - bounds.top) },
      ),
    labels: [],
  };
};
