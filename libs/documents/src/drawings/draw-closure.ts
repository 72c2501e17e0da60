import { bothSides, box, type Contour, mirrored, polyline } from './contour.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, cut, seen, seenBox, stroke } from './shape.js';

/** A nut in view: outline with its two inner edges. */
const nut = (x: number, from: number, size: { width: number; height: number }): Shape[] => {
  const { width, height } = size;
  const edges = [-0.25, 0.25].map((part) =>
    polyline([x + part * width, from], [x + part * width, from + height]),
  );
  return [seenBox([x - width / 2, from], [x + width / 2, from + height]), stroke('thin', ...edges)];
};

/** Distances from the axis at which the bolts of the rear half show, without the two in the plane. */
const rearPlaces = (layout: SetLayout): number[] => {
  const { count, circle: radius } = layout.bolt;
  return Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / count)
    .filter((angle) => Math.sin(angle) > 1e-6)
    .map((angle) => radius * Math.cos(angle));
};

/** The backing ring that carries the collar of a glass vessel. */
const backingRing = (layout: SetLayout): Shape[] => {
  const { outer, rim, rimFace, rimHeight, coverRadius, detail } = layout;
  const ring = polyline(
    [outer + 2.5 * detail, rimHeight * 1.2 + 2 * detail],
    [rim + 0.8 * detail, rimFace * 0.6],
    [coverRadius, rimFace * 0.6],
    [coverRadius, rimHeight * 1.3 + 4 * detail],
    [outer + 2.5 * detail, rimHeight * 1.3 + 4 * detail],
  );
  return bothSides(ring).map((side) => cut(side, 'aluminium', { close: true }));
};

const bolted = (layout: SetLayout): Shape[] => {
  const { bolt, coverTop, rimHeight, detail, set } = layout;
  const glass = set.vessel.construction === 'glass';
  const d = bolt.diameter;
  const size = { width: 1.7 * d, height: 0.8 * d };
  const under = glass ? rimHeight * 1.3 + 4 * detail : rimHeight;
  const oneBolt = (x: number): Shape[] => [
    seenBox([x - d / 2, coverTop - size.height - 0.5 * d], [x + d / 2, under + size.height + 0.3 * d]),
    ...nut(x, coverTop - size.height, size),
    ...nut(x, under, size),
  ];
  return [...(glass ? backingRing(layout) : []), ...oneBolt(bolt.circle), ...oneBolt(-bolt.circle)];
};

/** Bolts of the rear half, seen above the cover and below the rim. */
export const drawRearBolts = (layout: SetLayout): Shape[] => {
  const { bolt, coverTop, rimHeight, set } = layout;
  if (set.closure?.kind !== 'bolted') return [];
  const d = bolt.diameter;
  const size = { width: 1.7 * d, height: 0.8 * d };
  const under = set.vessel.construction === 'glass' ? rimHeight * 1.3 + 4 * layout.detail : rimHeight;
  return rearPlaces(layout).flatMap((x) => [
    seenBox([x - d / 2, coverTop - size.height - 0.5 * d], [x + d / 2, coverTop - size.height]),
    ...nut(x, coverTop - size.height, size),
    ...nut(x, under, size),
  ]);
};

/** Section of a clamp or a segment that grips both slopes. */
const grip = (layout: SetLayout): Contour => {
  const { rim, rimFace, rimHeight, outer, closureRadius, coverTop, detail, set } = layout;
  const thickness = closureRadius - rim;
  const coverFace = set.cover === null ? rimFace : Math.min(rimFace, -coverTop * 0.65);
  const coverSlope = set.cover === null ? rimHeight : Math.min(rimHeight, -coverTop * 0.84);
  const bite = outer + 4 * detail;
  const chamfer = 0.18 * thickness;
  const outside = set.closure?.kind === 'segment' ? closureRadius - 0.27 * thickness : closureRadius;
  const [above, under] = [-coverSlope - 0.5 * thickness, rimHeight + 0.5 * thickness];
  return polyline(
    [bite, above],
    [outside - chamfer, above],
    [outside, above + chamfer],
    [outside, under - chamfer],
    [outside - chamfer, under],
    [bite, under],
    [bite, rimHeight],
    [rim + 1.4 * detail, rimFace + 0.6 * detail],
    [rim + 1.4 * detail, -coverFace - 0.6 * detail],
    [bite, -coverSlope],
  );
};

const gripped = (layout: SetLayout): Shape[] => {
  const body = grip(layout);
  return bothSides(body).map((side, i) => cut(side, 'steel', { turned: i === 0, close: true }));
};

/** Ring that turns the segments, pin of the pressure interlock and handle. */
const segmentDrive = (layout: SetLayout): Shape[] => {
  const { closureRadius, rim, rimHeight, coverTop, detail: u, set } = layout;
  const outside = closureRadius - 0.27 * (closureRadius - rim);
  const half = rimHeight * 0.5;
  const top = -Math.min(rimHeight, -coverTop * 0.84) - 0.5 * (closureRadius - rim);
  const pin = outside - 9 * u;
  const interlock: Shape[] = set.closure?.interlock
    ? [
        seenBox([pin - 9 * u, top - 34 * u], [pin + 9 * u, top]),
        seenBox([pin - 5 * u, top - 42 * u], [pin + 5 * u, top - 34 * u]),
        stroke(
          'hidden',
          polyline([pin - 2 * u, top - 30 * u], [pin - 2 * u, top + 16 * u]),
          polyline([pin + 2 * u, top - 30 * u], [pin + 2 * u, top + 16 * u]),
        ),
        stroke('thin', polyline([pin - 9 * u, top - 12 * u], [pin + 9 * u, top - 12 * u])),
      ]
    : [];
  const handle = [
    seenBox([-closureRadius - 20 * u, -5.5 * u], [-closureRadius, 5.5 * u]),
    circle([-closureRadius - 23 * u, 0], 7.5 * u),
  ];
  return [
    ...bothSides(box([outside, -half], [closureRadius, half])).map((side) => cut(side, 'steel')),
    ...interlock,
    ...handle,
  ];
};

/** Eyes and bolt of a two-part clamp, seen at its side. */
const clampBolt = (layout: SetLayout): Shape[] => {
  const { closureRadius, rimHeight, detail: u } = layout;
  const eye = box([closureRadius, -0.4 * rimHeight], [closureRadius + 15 * u, 0.4 * rimHeight]);
  return [
    ...bothSides(eye).map((side) => seen(side)),
    ...[1, -1].flatMap((side) => [
      circle([side * (closureRadius + 8 * u), 0], 5 * u),
      circle([side * (closureRadius + 8 * u), 0], 2.4 * u, { line: 'thin' }),
    ]),
  ];
};

export const drawClosure = (layout: SetLayout): Shape[] => {
  const { closure } = layout.set;
  if (closure === null) return [];
  switch (closure.kind) {
    case 'bolted':
      return bolted(layout);
    case 'clamp':
      return [...clampBolt(layout), ...gripped(layout)];
    case 'segment':
      return [...gripped(layout), ...segmentDrive(layout)];
  }
};

/** Axes of the bolts. */
export const boltAxes = (layout: SetLayout): Shape => {
  const { bolt, coverTop, rimHeight } = layout;
  const line = polyline(
    [bolt.circle, coverTop - 2.2 * bolt.diameter],
    [bolt.circle, rimHeight + 2.4 * bolt.diameter],
  );
  return stroke('centre', line, mirrored(line));
};
