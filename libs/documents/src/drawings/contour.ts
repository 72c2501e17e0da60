/** A point on the drawing in millimetres; x to the right, y downwards. */
export type Point = readonly [x: number, y: number];

/** One step of a contour: a straight line to a point, or a cubic curve when control points are given. */
export interface Knot {
  readonly to: Point;
  readonly control?: readonly [Point, Point];
}

/** A line from knot to knot; the first knot is where it starts. */
export type Contour = readonly Knot[];

/** The smallest upright rectangle around something. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const polyline = (...points: readonly Point[]): Contour => points.map((to) => ({ to }));

export const box = ([x1, y1]: Point, [x2, y2]: Point): Contour =>
  polyline([x1, y1], [x2, y1], [x2, y2], [x1, y2]);

interface Arc {
  readonly centre: Point;
  /** Half axes along x and y; one number for a circle. */
  readonly radius: number | Point;
  /** Degrees, clockwise on the sheet from the positive x axis. */
  readonly from: number;
  readonly to: number;
}

/** An arc of a circle or an upright ellipse as cubic curves of at most 45° (error below 1e-5 of the radius). */
export const arc = ({ centre: [cx, cy], radius, from, to }: Arc): Contour => {
  const [rx, ry] = typeof radius === 'number' ? [radius, radius] : radius;
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / 45));
  const step = ((to - from) / pieces) * (Math.PI / 180);
  const reach = (4 / 3) * Math.tan(step / 4);
  const start = from * (Math.PI / 180);
  const at = (angle: number): Point => [cx + rx * Math.cos(angle), cy + ry * Math.sin(angle)];
  const along = (angle: number, length: number): Point => {
    const [x, y] = at(angle);
    return [x - length * rx * Math.sin(angle), y + length * ry * Math.cos(angle)];
  };
  return [
    { to: at(start) },
    ...Array.from({ length: pieces }, (_, i) => {
      const [a, b] = [start + i * step, start + (i + 1) * step];
      return { to: at(b), control: [along(a, reach), along(b, -reach)] as const };
    }),
  ];
};

/** One contour after another, joined by straight lines. */
export const chain = (...contours: readonly Contour[]): Contour => contours.flat();

const mapped = (contour: Contour, move: (point: Point) => Point): Contour =>
  contour.map(({ to, control }) =>
    control === undefined
      ? { to: move(to) }
      : { to: move(to), control: [move(control[0]), move(control[1])] },
  );

export const mirrored = (contour: Contour): Contour => mapped(contour, ([x, y]) => [-x, y]);

export const shifted = (contour: Contour, [dx, dy]: Point): Contour =>
  mapped(contour, ([x, y]) => [x + dx, y + dy]);

/** The same line, walked the other way. */
export const reversed = (contour: Contour): Contour =>
  contour.toReversed().map(({ to }, i, knots): Knot => {
    const control = i === 0 ? undefined : contour[knots.length - i]?.control;
    return control === undefined ? { to } : { to, control: [control[1], control[0]] };
  });

/** A contour on the right of the axis and its mirror image. */
export const bothSides = (contour: Contour): readonly [Contour, Contour] => [contour, mirrored(contour)];

const curvePoint = (start: Point, knot: Knot & { control: readonly [Point, Point] }, t: number): Point => {
  const mix = (axis: 0 | 1): number => {
    const u = 1 - t;
    const [c1, c2] = knot.control;
    return (
      u ** 3 * start[axis] + 3 * u * u * t * c1[axis] + 3 * u * t * t * c2[axis] + t ** 3 * knot.to[axis]
    );
  };
  return [mix(0), mix(1)];
};

/** The contour as points, each curve in eight chords. */
export const flattened = (contour: Contour): Point[] =>
  contour.flatMap((knot, i) => {
    const start = contour[i - 1]?.to;
    const { control } = knot;
    if (control === undefined || start === undefined) return [knot.to];
    return Array.from({ length: 8 }, (_, k) => curvePoint(start, { ...knot, control }, (k + 1) / 8));
  });

export const boxAround = (points: readonly Point[]): Box | undefined =>
  points.length === 0
    ? undefined
    : points.reduce<Box>(
        (around, [x, y]) => ({
          left: Math.min(around.left, x),
          top: Math.min(around.top, y),
          right: Math.max(around.right, x),
          bottom: Math.max(around.bottom, y),
        }),
        { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity },
      );

/** What of a closed polygon lies at or below a level (Sutherland and Hodgman against one horizontal line). */
export const below = (polygon: readonly Point[], level: number): Point[] =>
  polygon.flatMap((point, i) => {
    const before = polygon.at(i - 1) ?? point;
    const [inside, wasInside] = [point[1] >= level, before[1] >= level];
    const crossing: Point[] =
      inside === wasInside
        ? []
        : [[before[0] + ((level - before[1]) / (point[1] - before[1])) * (point[0] - before[0]), level]];
    return inside ? [...crossing, point] : crossing;
  });

/** A number for an attribute: at most two decimals, never in exponent form. */
export const figure = (value: number): string => String(Math.round(value * 100) / 100 + 0);

const pair = ([x, y]: Point): string => `${figure(x)} ${figure(y)}`;

/** The contour as the `d` of an SVG path. */
export const pathData = (contour: Contour, closed: boolean): string =>
  contour
    .map(({ to, control }, i) =>
      i === 0
        ? `M${pair(to)}`
        : control === undefined
          ? `L${pair(to)}`
          : `C${pair(control[0])} ${pair(control[1])} ${pair(to)}`,
    )
    .join('') + (closed ? 'Z' : '');
