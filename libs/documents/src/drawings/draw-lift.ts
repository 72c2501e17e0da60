import { polyline } from './contour.js';
import {
  armHeight,
  drawArm,
  drawBreak,
  drawColumn,
  drawScrews,
  type Lift,
  type Station,
} from './draw-stand.js';
import type { Shape } from './scene.js';
import { circle, seenBox, stroke } from './shape.js';

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
  const pivot = [x, (top + end) / 2 + 4 * u] as const;
  return [
    seenBox([x - 24 * u, top], [x + 24 * u, end]),
    stroke('thin', polyline([x - 24 * u, top + 12 * u], [x + 24 * u, top + 12 * u])),
    ...drawScrews(screws, 2.6 * u),
    ...(tilts ? [circle(pivot, 11 * u), circle(pivot, 4 * u, { fill: 'solid' })] : []),
  ];
};

const gearBox = ({ column: x, floor, layout }: Station, kind: Lift['kind']): Shape[] => {
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
    seenBox([x - 52 * u, floor - 52 * u], [x - 22 * u, floor - 18 * u]),
    stroke(
      'thin',
      ...[28, 34, 40, 46].map((dx) => polyline([x - dx * u, floor - 52 * u], [x - dx * u, floor - 18 * u])),
    ),
  ];
};

/** Fork under the mantle or around the vessel, for lifts that move the vessel. */
const fork = ({ layout, column }: Station): Shape[] => {
  const u = layout.detail;
  const y = layout.mantle?.bottom ?? layout.rimHeight * 1.4;
  const half = layout.mantle?.outer ?? layout.outer + 10 * u;
  return [
    seenBox([-half, y], [column, y + 12 * u]),
    seenBox([column - 22 * u, y - 30 * u], [column + 22 * u, y + 26 * u]),
  ];
};

/** Top of the column, and whether its stroke is drawn shortened. */
export const columnTop = (station: Station, lift: Lift): { readonly y: number; readonly broken: boolean } => {
  const { layout, top } = station;
  const u = layout.detail;
  const y = armHeight(layout);
  if (lift.moves === 'vessel') return { y: y - 14 * u, broken: false };
  const whole = y - 12 * u - lift.stroke;
  const least = Math.min(top + 8 * u, y - 70 * u);
  return whole < least - 60 * u ? { y: least, broken: true } : { y: whole, broken: false };
};

/** Column, spindle, carriage and arm; a stroke that reaches far over the drive is drawn with a break. */
export const drawLift = (station: Station, lift: Lift): Shape[] => {
  const { layout, column } = station;
  const u = layout.detail;
  const y = armHeight(layout);
  const end = columnTop(station, lift);
  return [
    ...drawColumn(station, end.y),
    ...spindle(station, end.y + 12 * u),
    ...gearBox(station, lift.kind),
    ...drawArm(station, column - (lift.moves === 'cover' ? 24 : 16) * u),
    ...(lift.moves === 'cover' ? carriage(station, y, lift.kind === 'electric with tilt') : fork(station)),
    ...(end.broken ? drawBreak({ centre: column, half: 16 * u, at: (end.y + y) / 2 - 6 * u, unit: u }) : []),
  ];
};
