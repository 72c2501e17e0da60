import { arc, box, chain, polyline } from './contour.js';
import type { PlacedPort } from './place-fittings.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, cut, seen, seenBox, stroke } from './shape.js';

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

const gauge = (spot: Spot): Shape[] => {
  const { x, y, u } = spot;
  const centre = [x, y - 62 * u] as const;
  return [
    ...gland(spot),
    stem(spot, 24 * u),
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

const condenser = (spot: Spot): Shape[] => {
  const { x, y, u, half } = spot;
  const [base, top] = [y - 20 * u, y - 170 * u];
  const wide = Math.max(half * 1.4, 14 * u);
  const turns = Array.from({ length: 8 }, (_, i) => base - 18 * u - i * 15 * u);
  return [
    seenBox([x - half * 0.7, base], [x + half * 0.7, y]),
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
  switch (port.kind) {
    case 'coil':
      return port.cut
        ? coilFeed(spot, set.coil?.tube ?? 8 * detail)
        : [...gland(spot), stem(spot, 20 * detail)];
    case 'gasInlet':
    case 'sampling':
      return needleValve(spot, side);
    case 'pressureGauge':
      return gauge(spot);
    case 'sightGlass':
      return sightGlass(spot);
    case 'charging':
      return funnel(spot, set.charging);
    case 'condenser':
      return condenser(spot);
    case 'temperatureProbe':
    case 'processProbe':
      return probeHead(spot);
    default:
      return [];
  }
};

/** Nozzle, holder with the bursting disc between its two rings, up to the top of the holder. */
export const drawRelief = (layout: SetLayout, port: PlacedPort | undefined): Shape[] => {
  const { relief } = layout.set;
  if (relief === null || port === undefined) return [];
  const { detail: u, coverTop: y } = layout;
  const [x, bore] = [port.x, Math.min(relief.bore, port.port.diameter * 1.2) / 2];
  const [neck, ring] = [bore + 4 * u, bore + 8.5 * u];
  const halves = (from: number, to: number, radius: number): Shape[] =>
    [1, -1].map((side) =>
      cut(box([x + side * bore, y - from], [x + side * radius, y - to]), 'steel', { close: true }),
    );
  const disc = chain(
    polyline([x - bore - 4.5 * u, y - 28.8 * u], [x - bore, y - 28.8 * u]),
    [
      {
        to: [x + bore, y - 28.8 * u],
        control: [
          [x - bore * 0.4, y - 28.8 * u - bore * 1.3],
          [x + bore * 0.4, y - 28.8 * u - bore * 1.3],
        ],
      },
    ],
    polyline([x + bore + 4.5 * u, y - 28.8 * u]),
  );
  return [
    seen(box([x - bore, y - 40 * u], [x + bore, y]), 'gas', 'none'),
    ...halves(0, 8 * u, bore + 6.5 * u),
    ...halves(8 * u, 17 * u, neck),
    ...halves(17 * u, 28 * u, ring),
    ...halves(29.6 * u, 40 * u, ring),
    stroke('disc', disc),
    stroke('centre', polyline([x, y - 62 * u], [x, 14 * u])),
  ];
};

/** Vent line from the disc over the closure to a safe place, with the way of the flow. */
export const drawVentLine = (layout: SetLayout, port: PlacedPort | undefined): Shape[] => {
  const { vent, relief } = layout.set;
  if (vent === null || port === undefined) return [];
  const { detail: u, coverTop } = layout;
  const h = Math.max(vent.diameter / 2, Math.min(relief?.bore ?? 7 * u, 40 * u) / 2) + 1;
  const [x, start] = [port.x, coverTop - (relief === null ? 0 : 40 * u)];
  const bend = 8 * u + h;
  const [up, out] = [start - 4 * u, Math.max(layout.girth + 24 * u, x + bend + 40 * u)];
  const middle = up - bend;
  const pipe = chain(
    polyline([x - h, start]),
    arc({ centre: [x + bend, up], radius: bend + h, from: 180, to: 270 }),
    polyline([out, middle - h], [out, middle + h]),
    arc({ centre: [x + bend, up], radius: bend - h, from: 270, to: 180 }),
    polyline([x + h, start]),
  );
  const tip = out + 34 * u;
  return [
    seen(pipe),
    seenBox([out, middle - h - 4 * u], [out + 6 * u, middle + h + 4 * u]),
    stroke('thin', polyline([out + 11 * u, middle], [tip - 6 * u, middle])),
    seen(
      polyline([tip, middle], [tip - 8 * u, middle - 2.8 * u], [tip - 8 * u, middle + 2.8 * u]),
      'solid',
      'none',
    ),
  ];
};
