import { setName } from '@flangewise/model';
import type { Point } from './contour.js';
import { dimensionsOf } from './dimension.js';
import type { DrawingModel, DrawnSet } from './drawing-model.js';
import type { Scene } from './scene.js';
import { boundsOf } from './scene-bounds.js';
import { sceneSlotsOf } from './scene-slots.js';
import { baseParts, standingSets } from './standing-sets.js';

export interface SectionOptions {
  /** Draw only the set with this index, with everything it shares. */
  readonly set?: number;
  /** `short` breaks the stand off early, so that the vessel shows larger. */
  readonly stand?: 'full' | 'short';
}

const labelOf = (set: DrawnSet, alone: boolean): string => {
  const label = alone ? (set.label ?? 'as drawn') : setName(set.label, set.index);
  return set.count > 1 ? `${String(set.count)} × ${label}` : label;
};

/** The sectional drawing of a system, or of one of its sets; undefined while no vessel is chosen. */
export const sectionOf = (model: DrawingModel, options: SectionOptions = {}): Scene | undefined => {
  const shown = model.sets.filter(({ index }) => options.set === undefined || index === options.set);
  if (shown.length === 0) return undefined;
  const { sets, floor } = standingSets(model, shown, options.stand ?? 'full');
  const parts = [...baseParts(model, sets, floor), ...sets.flatMap((set) => set.parts)];
  const bounds = boundsOf(parts);
  return {
    title: model.title,
    bounds,
    parts,
    slots: sceneSlotsOf(model, shown),
    dimensions: dimensionsOf(model, sets, { bounds, floor }),
    labels: sets
      .filter(({ set }) => model.sets.length > 1 || set.count > 1)
      .map(({ set, x }): { at: Point; text: string } => ({
        at: [x, bounds.bottom],
        text: labelOf(set, model.sets.length === 1),
      })),
    broken: floor.breakAt !== null,
  };
};
