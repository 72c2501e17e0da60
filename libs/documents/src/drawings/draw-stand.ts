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
  /** Lowest point of what hangs over the floor. */
  readonly lowest: number;
}

const footOf = (layout: SetLayout): { readonly half: number; readonly from: number } => {
  const { mantle, jacket, girth, cylinder, detail, set } = layout;
  if (mantle !== null) return { half: mantle.outer - 18 * detail, from: mantle.bottom };
  if (set.shield !== null || jacket !== null || set.vessel.construction !== 'metal')
    return { half: girth + 4 * detail, from: layout.rimHeight * 1.4 };
  return { half: layout.outer + 14 * detail, from: cylinder * 0.5 };
};

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

const armHeight = (layout: SetLayout): number => couplingTop(layout) + 34 * layout.couplingScale;

const arm = ({ layout, column }: Station, to: number): Shape[] => {
  const { couplingScale: c, detail: u } = layout;
  const y = armHeight(layout);
  const start = layout.set.coupling === null ? 0 : 41 * c;
  const thick = Math.max(30 * u, 26 * c);
  const bend = chain(
    polyline([start, y], [to, y], [to, y + thick], [start + (column - start) * 0.42, y + thick]),
    arc({
      centre: [start + (column - start) * 0.42, y + thick - 8 * u],
      radius: [24 * u, 8 * u],
      from: 90,
      to: 180,
    }),
    polyline([start, y + thick - 9 * u]),
  );
  return [seen(bend), stroke('thin', polyline([start, y + 7 * u], [to, y + 7 * u]))];
};

const columnBody = (station: Station, top: number): Shape[] => {
  const { column: x, floor, layout } = station;
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
  const top = armHeight(station.layout) - 14 * station.layout.detail;
  return [...columnBody(station, top), ...arm(station, station.column - 16 * station.layout.detail)];
};

const spindle = ({ column: x, floor, layout }: Station, top: number): Shape[] => {
  const u = layout.detail;
  const bottom = floor - 68 * u;
  const turns = Math.max(0, Math.min(60, Math.floor((bottom - top) / (14 * u))));
  return [
    stroke(
      'hidden',
      polyline([x - 3 * u, top], [x - 3 * u, bottom]),
      polyline([x + 3 * u, top], [x + 3 * u, bottom]),
    ),
    stroke(
      'thin',
      ...Array.from({ length: turns }, (_, i) =>
        polyline([x - 3 * u, top + (i + 1) * 14 * u], [x + 3 * u, top + (i + 1) * 14 * u - 3 * u]),
      ),
    ),
  ];
};

const carriage = ({ column: x, layout }: Station, y: number, tilts: boolean): Shape[] => {
  const u = layout.detail;
  const [top, end] = [y - 12 * u, y + Math.max(54 * u, 34 * layout.couplingScale)];
  const screws = [x - 12 * u, x + 12 * u].flatMap((sx) =>
    [top + 22 * u, end - 10 * u].map((sy) => [sx, sy] as const),
  );
  return [
    seenBox([x - 24 * u, top], [x + 24 * u, end]),
    stroke('thin', polyline([x - 24 * u, top + 12 * u], [x + 24 * u, top + 12 * u])),
    ...screws.map((at) => circle(at, 2.6 * u, { line: 'thin' })),
    ...(tilts
      ? [
          circle([x, (top + end) / 2 + 4 * u], 11 * u),
          circle([x, (top + end) / 2 + 4 * u], 4 * u, { fill: 'solid' }),
        ]
      : []),
  ];
};

const gearBox = (
  { column: x, floor, layout }: Station,
  kind: NonNullable<DrawingModel['lift']>['kind'],
): Shape[] => {
  const u = layout.detail;
  const body = seenBox([x - 22 * u, floor - 64 * u], [x + 22 * u, floor - 6 * u]);
  if (kind === 'hand crank')
    return [
      body,
      seenBox([x + 22 * u, floor - 40 * u], [x + 34 * u, floor - 32 * u]),
      seenBox([x + 34 * u, floor - 86 * u], [x + 41 * u, floor - 28 * u]),
      seenBox([x + 41 * u, floor - 86 * u], [x + 62 * u, floor - 76 * u]),
    ];
  return [
    body,
    seenBox([x + 22 * u, floor - 52 * u], [x + 52 * u, floor - 18 * u]),
    stroke(
      'thin',
      ...[28, 34, 40, 46].map((dx) => polyline([x + dx * u, floor - 52 * u], [x + dx * u, floor - 18 * u])),
    ),
  ];
};

/** Fork under the mantle or around the vessel, for lifts that move the vessel. */
const fork = (station: Station): Shape[] => {
  const { layout, column } = station;
  const u = layout.detail;
  const y = layout.mantle?.bottom ?? layout.rimHeight * 1.4;
  const half = layout.mantle?.outer ?? layout.outer + 10 * u;
  return [
    seenBox([-half, y], [column, y + 12 * u]),
    seenBox([column - 22 * u, y - 30 * u], [column + 22 * u, y + 26 * u]),
  ];
};

/** Column with its stroke drawn in full, spindle, carriage and arm. */
export const drawLift = (station: Station, lift: NonNullable<DrawingModel['lift']>): Shape[] => {
  const { layout } = station;
  const y = armHeight(layout);
  const top = lift.moves === 'cover' ? y - 12 * layout.detail - lift.stroke : y - 14 * layout.detail;
  return [
    ...columnBody(station, top),
    ...spindle(station, top + 12 * layout.detail),
    ...gearBox(station, lift.kind),
    ...arm(station, station.column - (lift.moves === 'cover' ? 24 : 16) * layout.detail),
    ...(lift.moves === 'cover' ? carriage(station, y, lift.kind === 'electric with tilt') : fork(station)),
  ];
};

/** White band between two zigzag lines where stand and column are drawn shortened. */
export const drawBreak = (span: { left: number; right: number; at: number; unit: number }): Shape[] => {
  const { left, right, at, unit: u } = span;
  const zigzag = (y: number) => {
    const middle = (left + right) / 2;
    return polyline(
      [left, y],
      [middle - 4 * u, y],
      [middle - 2 * u, y - 6 * u],
      [middle + 2 * u, y + 6 * u],
      [middle + 4 * u, y],
      [right, y],
    );
  };
  return [
    seen(box([left, at - 3 * u], [right, at + 3 * u]), 'sheet', 'none'),
    stroke('thin', zigzag(at - 3 * u), zigzag(at + 3 * u)),
  ];
};
