import { arc, box, chain, polyline } from './contour.js';
import { couplingTop } from './draw-coupling.js';
import type { DrawingModel } from './drawing-model.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, seen, seenBox, stroke } from './shape.js';

/** Where stand and column of one set are, in its own coordinates [mm]. */
export interface Station {
  readonly layout: SetLayout;
  /** Axis of the column. */
  readonly column: number;
  readonly floor: number;
  /** Highest point of what stands on the cover. */
  readonly top: number;
}

const footOf = (layout: SetLayout): { readonly half: number; readonly from: number } => {
  const { mantle, jacket, girth, cylinder, detail, set } = layout;
  if (mantle !== null) return { half: mantle.outer - 18 * detail, from: mantle.bottom };
  if (set.shield !== null || jacket !== null || set.vessel.construction !== 'metal')
    return { half: girth + 4 * detail, from: layout.rimHeight * 1.4 };
  return { half: layout.outer + 14 * detail, from: cylinder * 0.5 };
};

/** Distance of the legs from the axis [mm]. */
export const legReach = (layout: SetLayout): number => footOf(layout).half;

/** Legs under the mantle, or posts with brackets beside a vessel that has none. */
export const drawLegs = ({ layout, floor }: Station): Shape[] => {
  const { half, from } = footOf(layout);
  const u = layout.detail;
  const bracket =
    layout.mantle === null
      ? [1, -1].map((side) =>
          seen(box([side * layout.closureRadius * 0.9, from], [side * (half + 9 * u), from + 8 * u])),
        )
      : [];
  return [
    ...[1, -1].flatMap((side) => [
      seenBox([side * half - 7 * u, from], [side * half + 7 * u, floor]),
      seenBox([side * half - 13 * u, floor - 4 * u], [side * half + 13 * u, floor]),
    ]),
    ...bracket,
  ];
};

/** Base plate on its feet. */
export const drawBase = (span: { left: number; right: number; floor: number; unit: number }): Shape[] => {
  const { left, right, floor, unit: u } = span;
  return [
    seenBox([left, floor], [right, floor + 14 * u]),
    ...[left + 12 * u, right - 38 * u].map((x) => seenBox([x, floor + 14 * u], [x + 26 * u, floor + 20 * u])),
  ];
};

/** Height of the arm that holds lantern and cover [mm]. */
export const armHeight = (layout: SetLayout): number => couplingTop(layout) + 62 * layout.couplingScale;

export const drawArm = ({ layout, column }: Station, to: number): Shape[] => {
  const { couplingScale: c, detail: u } = layout;
  const y = armHeight(layout);
  const start = layout.set.coupling === null ? 0 : 41 * c;
  const thick = Math.max(30 * u, 26 * c);
  const knee = start + (column - start) * 0.42;
  const outline = chain(
    polyline([start, y], [to, y], [to, y + thick], [knee, y + thick]),
    arc({ centre: [knee, y + thick - 8 * u], radius: [24 * u, 8 * u], from: 90, to: 180 }),
    polyline([start, y + thick - 9 * u]),
  );
  return [seen(outline), stroke('thin', polyline([start, y + 7 * u], [to, y + 7 * u]))];
};

/** A column on the base with its guide rails and cap. */
export const drawColumn = ({ column: x, floor, layout }: Station, top: number): Shape[] => {
  const u = layout.detail;
  return [
    seenBox([x - 16 * u, top], [x + 16 * u, floor]),
    stroke(
      'thin',
      polyline([x - 9 * u, top + 6 * u], [x - 9 * u, floor - 6 * u]),
      polyline([x + 9 * u, top + 6 * u], [x + 9 * u, floor - 6 * u]),
    ),
    seenBox([x - 20 * u, top - 8 * u], [x + 20 * u, top]),
  ];
};

/** Post that carries the drive where there is no lift. */
export const drawPost = (station: Station): Shape[] => {
  const { column, layout } = station;
  const u = layout.detail;
  return [...drawColumn(station, armHeight(layout) - 14 * u), ...drawArm(station, column - 16 * u)];
};

/** Where an upright part is drawn shortened: a white band between two zigzag lines. */
export const drawBreak = (span: { centre: number; half: number; at: number; unit: number }): Shape[] => {
  const { centre: x, half, at, unit: u } = span;
  const edge = half + 3 * u;
  const zigzag = (y: number) =>
    polyline(
      [x - edge, y],
      [x - 4 * u, y],
      [x - 2 * u, y - 5 * u],
      [x + 2 * u, y + 5 * u],
      [x + 4 * u, y],
      [x + edge, y],
    );
  return [
    seen(box([x - half - 1.2 * u, at - 3 * u], [x + half + 1.2 * u, at + 3 * u]), 'sheet', 'none'),
    stroke('thin', zigzag(at - 3 * u), zigzag(at + 3 * u)),
  ];
};

/** Screw of a carriage. */
export const drawScrews = (points: readonly (readonly [number, number])[], size: number): Shape[] =>
  points.map((at) => circle(at, size, { line: 'thin' }));

export type Lift = NonNullable<DrawingModel['lift']>;
