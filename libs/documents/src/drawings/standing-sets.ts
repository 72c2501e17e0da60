import type { Box } from './contour.js';
import { drawLift } from './draw-lift.js';
import { drawBase, drawBreak, drawLegs, drawPost, legReach, type Station } from './draw-stand.js';
import type { DrawingModel, DrawnSet } from './drawing-model.js';
import { moveParts } from './move-shape.js';
import type { Part, Shape } from './scene.js';
import { boundsOf } from './scene-bounds.js';
import { layoutOf, type SetLayout } from './set-layout.js';
import { setParts } from './set-parts.js';

/** One set where it stands on the drawing. */
export interface StandingSet {
  readonly set: DrawnSet;
  readonly layout: SetLayout;
  readonly station: Station;
  /** Already moved to its place. */
  readonly parts: readonly Part[];
  /** Axis of the set on the drawing, its extent without stand. */
  readonly x: number;
  readonly body: Box;
  readonly upright: 'lift' | 'post' | null;
}

export interface Floor {
  readonly y: number;
  /** Middle of the break, where the stand is drawn shortened. */
  readonly breakAt: number | null;
}

/** The floor at its true height, or nearer with a break where the stand would take most of the sheet. */
const floorOf = (model: DrawingModel, bodies: readonly Box[], stand: 'full' | 'short'): Floor => {
  const lowest = Math.max(...bodies.map((body) => body.bottom));
  const highest = Math.min(...bodies.map((body) => body.top));
  const least = lowest + 0.07 * (lowest - highest);
  const wanted = model.frame?.height ?? least;
  const allowed = (stand === 'full' ? 0.26 : 0.08) * (lowest - highest);
  if (wanted - lowest > 1.4 * allowed) return { y: lowest + allowed, breakAt: lowest + allowed * 0.6 };
  return { y: Math.max(wanted, least), breakAt: null };
};

const uprightOf = (model: DrawingModel, set: DrawnSet, mounted: boolean): StandingSet['upright'] => {
  if (!mounted) return null;
  if (model.lift !== null) return 'lift';
  return model.frame !== null && model.drive !== null && set.stirrer?.impeller !== 'magnetic bar'
    ? 'post'
    : null;
};

const standParts = (
  station: Station,
  model: DrawingModel,
  stands: Pick<StandingSet, 'upright'> & { floor: Floor },
): Part[] => {
  const { upright, floor } = stands;
  const slot = model.frame === null ? null : ('frame.frame' as const);
  const { layout, column } = station;
  const leg = legReach(layout);
  const cuts = [
    { centre: leg, half: 7 * layout.detail },
    { centre: -leg, half: 7 * layout.detail },
    ...(upright === null ? [] : [{ centre: column, half: 16 * layout.detail }]),
  ];
  const { breakAt } = floor;
  const breaks: Shape[] =
    breakAt === null ? [] : cuts.flatMap((cut) => drawBreak({ ...cut, at: breakAt, unit: layout.detail }));
  const raised: Part[] =
    upright === 'lift' && model.lift !== null
      ? [{ slot: 'frame.lift', shapes: drawLift(station, model.lift) }]
      : upright === 'post'
        ? [{ slot, shapes: drawPost(station) }]
        : [];
  return [...raised, { slot, shapes: drawLegs(station) }, { slot: null, shapes: breaks }];
};

/** The sets side by side on one floor, each with its stand; only mounted ones have the drive. */
export const standingSets = (
  model: DrawingModel,
  shown: readonly DrawnSet[],
  stand: 'full' | 'short',
): { readonly sets: StandingSet[]; readonly floor: Floor } => {
  const first = shown[0]?.index;
  const built = shown.map((set) => {
    const layout = layoutOf(set);
    const mounted = model.parallel || set.index === first;
    const parts = setParts(layout, model, mounted ? model.drive : null);
    return { set, layout, mounted, parts, body: boundsOf(parts) };
  });
  const floor = floorOf(
    model,
    built.map(({ body }) => body),
    stand,
  );
  const hasStand = model.frame !== null || model.lift !== null;
  let cursor = 0;
  const sets = built.map(({ set, layout, mounted, parts, body }, i): StandingSet => {
    const solid = boundsOf(parts.filter(({ slot }) => slot !== null));
    const column = Math.max(solid.right, layout.girth) + 32 * layout.detail;
    const station: Station = { layout, column, floor: floor.y, top: body.top };
    const upright = uprightOf(model, set, mounted);
    const all = [...(hasStand ? standParts(station, model, { upright, floor }) : []), ...parts];
    const whole = boundsOf(all);
    const x = i === 0 ? 0 : cursor + 34 * layout.detail - whole.left;
    cursor = x + whole.right;
    return { set, layout, station, parts: moveParts(all, [x, 0]), x, body, upright };
  });
  return { sets, floor };
};

/** The base under all of them; nothing where neither frame nor lift is chosen. */
export const baseParts = (model: DrawingModel, sets: readonly StandingSet[], floor: Floor): Part[] => {
  if (model.frame === null && model.lift === null) return [];
  const unit = Math.max(...sets.map(({ layout }) => layout.detail));
  const reach = sets.map(({ x, layout, station, upright }) => ({
    left: x - Math.max(layout.girth, legReach(layout) + 13 * unit),
    right:
      x +
      (upright === null ? Math.max(layout.girth, legReach(layout) + 13 * unit) : station.column + 24 * unit),
  }));
  const left = Math.min(...reach.map((edge) => edge.left)) - 12 * unit;
  const right = Math.max(...reach.map((edge) => edge.right)) + 12 * unit;
  return [
    {
      slot: model.frame === null ? null : 'frame.frame',
      shapes: drawBase({ left, right, floor: floor.y, unit }),
    },
  ];
};
