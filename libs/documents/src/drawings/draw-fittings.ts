import { arc, chain, polyline } from './contour.js';
import type { PlacedPort } from './place-fittings.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, seen, seenBox, stroke } from './shape.js';

interface Spot {
  readonly x: number;
  /** Top of the cover. */
  readonly y: number;
  readonly u: number;
  /** Half width of the screwed neck. */
  readonly half: number;
}

/** Hexagon neck with cap nut; everything screwed into a port starts with it. */
const gland = ({ x, y, u, half }: Spot): Shape[] => [
  seen(
    polyline(
      [x - half, y],
      [x + half, y],
      [x + half, y - 10 * u],
      [x + half * 0.8, y - 14 * u],
      [x - half * 0.8, y - 14 * u],
      [x - half, y - 10 * u],
    ),
  ),
  seenBox([x - half * 0.82, y - 24 * u], [x + half * 0.82, y - 14 * u]),
  stroke(
    'thin',
    polyline([x - half * 0.35, y - 24 * u], [x - half * 0.35, y - 14 * u]),
    polyline([x + half * 0.35, y - 24 * u], [x + half * 0.35, y - 14 * u]),
  ),
];

const stem = ({ x, y, u, half }: Spot, length: number): Shape =>
  seenBox([x - half * 0.34, y - 24 * u - length], [x + half * 0.34, y - 24 * u]);

const needleValve = (spot: Spot, side: number): Shape[] => {
  const { x, y, u } = spot;
  const top = y - 34 * u;
  return [
    ...gland(spot),
    stem(spot, 12 * u),
    seenBox([x - 7 * u, top - 14 * u], [x + 7 * u, top]),
    seenBox([x + side * 7 * u, top - 10 * u], [x + side * 22 * u, top - 4 * u]),
    seenBox([x - 2 * u, top - 22 * u], [x + 2 * u, top - 14 * u]),
    seenBox([x - 8 * u, top - 25 * u], [x + 8 * u, top - 22 * u]),
  ];
};

/** A pipe that leads to the left, clear of the coupling, and ends upright at `end`. */
const sidePipe = (spot: Spot, end: { x: number; y: number; half: number }): Shape => {
  const { x, y, u } = spot;
  const [h, across] = [end.half, y - 34 * u];
  return seen(
    polyline(
      [x - h, y - 24 * u],
      [x - h, across + h],
      [end.x - h, across + h],
      [end.x - h, end.y],
      [end.x + h, end.y],
      [end.x + h, across - h],
      [x + h, across - h],
      [x + h, y - 24 * u],
    ),
  );
};

const gauge = (spot: Spot, aside: number): Shape[] => {
  const { y, u } = spot;
  const centre = [-aside - 22 * u, y - 84 * u] as const;
  const x = centre[0];
  return [
    ...gland(spot),
    sidePipe(spot, { x, y: centre[1], half: 2.4 * u }),
    circle(centre, 17 * u),
    circle(centre, 14 * u, { line: 'thin' }),
    stroke('fine', polyline(centre, [x + 8 * u, centre[1] - 8 * u])),
    circle(centre, 1.6 * u, { fill: 'solid', line: 'none' }),
  ];
};

const probeHead = (spot: Spot): Shape[] => {
  const { x, y, u } = spot;
  return [...gland(spot), stem(spot, 10 * u), seenBox([x - 6 * u, y - 48 * u], [x + 6 * u, y - 34 * u])];
};

const sightGlass = (spot: Spot): Shape[] => {
  const { x, y, u, half } = spot;
  return [
    seenBox([x - half, y - 8 * u], [x + half, y]),
    seenBox([x - half * 1.5, y - 16 * u], [x + half * 1.5, y - 8 * u]),
    seenBox([x - half, y - 20 * u], [x + half, y - 16 * u], 'water'),
    seenBox([x - half * 1.5, y - 28 * u], [x + half * 1.5, y - 20 * u]),
  ];
};

const funnel = (
  spot: Spot,
  kind: 'solids funnel' | 'liquids funnel' | 'burette against pressure' | null,
): Shape[] => {
  const { x, y, u, half } = spot;
  const base = y - 34 * u;
  const valve = [...gland(spot), stem(spot, 10 * u), circle([x, base], 7 * u)];
  if (kind === 'burette against pressure')
    return [
      ...valve,
      seenBox([x - 8 * u, base - 74 * u], [x + 8 * u, base - 8 * u]),
      seenBox([x - 8 * u, base - 44 * u], [x + 8 * u, base - 8 * u], 'water'),
      seenBox([x - 11 * u, base - 80 * u], [x + 11 * u, base - 74 * u]),
    ];
  const wide = Math.max(half * 2, 20 * u);
  return [
    ...valve,
    seen(
      polyline(
        [x - 4 * u, base - 7 * u],
        [x + 4 * u, base - 7 * u],
        [x + wide, base - 34 * u],
        [x + wide, base - 44 * u],
        [x - wide, base - 44 * u],
        [x - wide, base - 34 * u],
      ),
    ),
  ];
};

const condenser = (spot: Spot, aside: number): Shape[] => {
  const { y, u, half } = spot;
  const [base, top] = [y - 48 * u, y - 190 * u];
  const x = -aside - Math.max(half * 1.4, 14 * u) - 10 * u;
  const wide = Math.max(half * 1.4, 14 * u);
  const turns = Array.from({ length: 8 }, (_, i) => base - 18 * u - i * 15 * u);
  return [
    ...gland(spot),
    sidePipe(spot, { x, y: base, half: 4 * u }),
    seenBox([x - wide - 4 * u, base - 5 * u], [x + wide + 4 * u, base]),
    seenBox([x - wide, top], [x + wide, base - 5 * u]),
    stroke('thin', ...turns.map((at) => polyline([x - wide * 0.7, at], [x + wide * 0.7, at - 7 * u]))),
    seenBox([x - wide - 4 * u, top - 5 * u], [x + wide + 4 * u, top]),
  ];
};

const coilFeed = (spot: Spot, tube: number): Shape[] => {
  const { x, y, u } = spot;
  const [h, side] = [tube / 2, x < 0 ? -1 : 1];
  const bend = 14 * u + h;
  const [up, out] = [y - 40 * u, x + side * (bend + 36 * u)];
  const outerBend = arc({
    centre: [x + side * bend, up],
    radius: bend + h,
    from: side < 0 ? 0 : 180,
    to: side < 0 ? -90 : 270,
  });
  const innerBend = arc({
    centre: [x + side * bend, up],
    radius: bend - h,
    from: side < 0 ? -90 : 270,
    to: side < 0 ? 0 : 180,
  });
  return [
    ...gland(spot),
    seen(
      chain(
        polyline([x - side * h, y - 24 * u]),
        outerBend,
        polyline([out, up - bend - h], [out, up - bend + h]),
        innerBend,
        polyline([x + side * h, y - 24 * u]),
      ),
    ),
  ];
};

/** What stands on the cover at a port that is in use; relief has a drawing of its own. */
export const drawFitting = (layout: SetLayout, port: PlacedPort): Shape[] => {
  const { set, detail, coverTop } = layout;
  const half = Math.max(port.port.diameter * 0.75, 6 * detail);
  const spot: Spot = { x: port.x, y: coverTop, u: detail, half };
  const side = port.x < 0 ? -1 : 1;
  const aside = set.coupling === null ? 0 : 52 * layout.couplingScale;
  switch (port.kind) {
    case 'coil':
      return port.cut
        ? coilFeed(spot, set.coil?.tube ?? 8 * detail)
        : [...gland(spot), stem(spot, 20 * detail)];
    case 'gasInlet':
    case 'sampling':
      return needleValve(spot, side);
    case 'pressureGauge':
      return gauge(spot, aside);
    case 'sightGlass':
      return sightGlass(spot);
    case 'charging':
      return funnel(spot, set.charging);
    case 'condenser':
      return condenser(spot, aside + (set.gauge ? 46 * detail : 0));
    case 'temperatureProbe':
    case 'processProbe':
      return probeHead(spot);
    default:
      return [];
  }
};
