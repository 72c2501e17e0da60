import { type SlotName, slotNames, slotPath, type SlotPath, slots, parseSlotPath } from '@flangewise/model';
import type { Box, Point } from './contour.js';
import { dimensionsOf } from './dimension.js';
import { drawBase, drawBreak, drawLegs, drawLift, drawPost, type Station } from './draw-stand.js';
import type { DrawingModel, DrawnSet } from './drawing-model.js';
import { moveParts } from './move-shape.js';
import type { Part, Scene, SceneSlot } from './scene.js';
import { boundsOf } from './scene-bounds.js';
import { layoutOf } from './set-layout.js';
import { setParts } from './set-parts.js';

export interface SectionOptions {
  /** Draw only the set with this index, with everything it shares. */
  readonly set?: number;
}

interface Standing {
  readonly set: DrawnSet;
  readonly station: Station;
  readonly parts: readonly Part[];
  readonly bounds: Box;
  /** Where the axis of the set lies on the drawing. */
  readonly x: number;
}

interface Floor {
  readonly y: number;
  /** Middle of the break, where the stand is drawn shortened. */
  readonly breakAt: number | null;
}

/** The floor at its true height, or nearer with a break where the stand would take most of the sheet. */
const floorOf = (model: DrawingModel, bodies: readonly Box[]): Floor => {
  const lowest = Math.max(...bodies.map((body) => body.bottom));
  const highest = Math.min(...bodies.map((body) => body.top));
  const least = lowest + 0.04 * (lowest - highest);
  const wanted = model.frame?.height ?? least;
  const allowed = 0.32 * (lowest - highest);
  if (wanted - lowest > 1.5 * allowed) return { y: lowest + allowed, breakAt: lowest + allowed * 0.55 };
  return { y: Math.max(wanted, least), breakAt: null };
};

const standParts = (
  standing: Omit<Standing, 'parts' | 'x'>,
  model: DrawingModel,
  mounted: boolean,
): Part[] => {
  const { station, set } = standing;
  const frame = (shapes: Part['shapes']): Part => ({
    slot: model.frame === null ? null : 'frame.frame',
    shapes,
  });
  const bar = set.stirrer?.impeller === 'magnetic bar';
  const raised = !mounted
    ? []
    : model.lift !== null
      ? [{ slot: 'frame.lift' as const, shapes: drawLift(station, model.lift) }]
      : model.frame !== null && model.drive !== null && !bar
        ? [frame(drawPost(station))]
        : [];
  return [...raised, frame(drawLegs(station))];
};

const standsOf = (
  model: DrawingModel,
  shown: readonly DrawnSet[],
): { standing: Standing[]; floor: Floor } => {
  const first = shown[0]?.index;
  const built = shown.map((set) => {
    const layout = layoutOf(set);
    const mounted = model.parallel || set.index === first;
    const parts = setParts(layout, model, mounted ? model.drive : null);
    return { set, layout, mounted, parts, bounds: boundsOf(parts) };
  });
  const floor = floorOf(
    model,
    built.map(({ bounds }) => bounds),
  );
  let cursor = 0;
  const standing = built.map(({ set, layout, mounted, parts, bounds }, i): Standing => {
    const column = Math.max(bounds.right, layout.girth) + 22 * layout.detail;
    const station: Station = { layout, column, floor: floor.y, lowest: bounds.bottom };
    const all = [...standParts({ set, station, bounds }, model, mounted), ...parts];
    const whole = boundsOf(all);
    const x = i === 0 ? 0 : cursor + 34 * layout.detail - whole.left;
    cursor = x + whole.right;
    return { set, station, parts: all, bounds: whole, x };
  });
  return { standing, floor };
};

const baseParts = (model: DrawingModel, standing: readonly Standing[], floor: Floor): Part[] => {
  const unit = Math.max(...standing.map(({ station }) => station.layout.detail));
  const edges = standing.map(({ x, station, parts }) => {
    const stand = boundsOf(
      parts.filter(({ slot }) => slot === 'frame.frame' || slot === 'frame.lift' || slot === null),
    );
    return {
      left: x + Math.min(stand.left, -station.layout.girth),
      right: x + Math.max(stand.right, station.layout.girth),
    };
  });
  const left = Math.min(...edges.map((edge) => edge.left)) - 12 * unit;
  const right = Math.max(...edges.map((edge) => edge.right)) + 12 * unit;
  const base: Part = {
    slot: model.frame === null ? null : 'frame.frame',
    shapes: drawBase({ left, right, floor: floor.y, unit }),
  };
  if (floor.breakAt === null) return [base];
  return [base, { slot: null, shapes: drawBreak({ left, right, at: floor.breakAt, unit }) }];
};

const titleOf = (slot: SlotName, sets: number, set: number | null): string =>
  sets > 1 && set !== null ? `${slots[slot].title}, set ${String(set + 1)}` : slots[slot].title;

const slotsOf = (model: DrawingModel, shown: readonly DrawnSet[]): SceneSlot[] => {
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
        title: titleOf(parsed.slot, model.sets.length, set),
        name,
        set,
        status: verdict?.status ?? null,
        text: verdict?.text ?? null,
      },
    ];
  });
};

const labelOf = (set: DrawnSet): string => {
  const label = set.label ?? `Set ${String(set.index + 1)}`;
  return set.count > 1 ? `${label} (${String(set.count)} ×)` : label;
};

/** The sectional drawing of a system, or of one of its sets; undefined while no vessel is chosen. */
export const sectionOf = (model: DrawingModel, options: SectionOptions = {}): Scene | undefined => {
  const shown = model.sets.filter(({ index }) => options.set === undefined || index === options.set);
  if (shown.length === 0) return undefined;
  const { standing, floor } = standsOf(model, shown);
  const hasStand = model.frame !== null || model.lift !== null;
  const parts = [
    ...(hasStand ? baseParts(model, standing, floor) : []),
    ...standing.flatMap((one) => moveParts(one.parts, [one.x, 0])),
  ];
  const bounds = boundsOf(parts);
  return {
    title: model.title,
    bounds,
    parts,
    slots: slotsOf(model, shown),
    dimensions: dimensionsOf(
      standing.map(({ station, x }) => ({ layout: station.layout, x })),
      { model, bounds, floor: floor.y, broken: floor.breakAt !== null },
    ),
    labels:
      model.sets.length === 1
        ? []
        : standing.map(({ set, x }): { at: Point; text: string } => ({
            at: [x, bounds.bottom],
            text: labelOf(set),
          })),
    broken: floor.breakAt !== null,
  };
};
