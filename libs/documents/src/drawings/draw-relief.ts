import { arc, box, chain, polyline } from './contour.js';
import type { PlacedPort } from './place-fittings.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { cut, seen, seenBox, stroke } from './shape.js';

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

interface VentPath {
  readonly half: number;
  readonly start: number;
  readonly bend: number;
  readonly middle: number;
  readonly out: number;
}

const ventPath = (layout: SetLayout, port: PlacedPort): VentPath => {
  const { detail: u, coverTop, set } = layout;
  const bore = set.relief?.bore ?? 7 * u;
  const half = Math.max((set.vent?.diameter ?? bore) / 2, Math.min(bore, 40 * u) / 2) + 1;
  const bend = 8 * u + half;
  const start = coverTop - (set.relief === null ? 0 : 40 * u);
  return {
    half,
    start,
    bend,
    middle: start - 4 * u - bend,
    out: Math.max(layout.girth + 24 * u, port.x + bend + 40 * u),
  };
};

/** Vent line from the disc over the closure to a safe place. */
export const drawVentLine = (layout: SetLayout, port: PlacedPort | undefined): Shape[] => {
  if (layout.set.vent === null || port === undefined) return [];
  const { half: h, start, bend, middle, out } = ventPath(layout, port);
  const x = port.x;
  const u = layout.detail;
  const pipe = chain(
    polyline([x - h, start]),
    arc({ centre: [x + bend, middle + bend], radius: bend + h, from: 180, to: 270 }),
    polyline([out, middle - h], [out, middle + h]),
    arc({ centre: [x + bend, middle + bend], radius: bend - h, from: 270, to: 180 }),
    polyline([x + h, start]),
  );
  return [seen(pipe), seenBox([out, middle - h - 4 * u], [out + 6 * u, middle + h + 4 * u])];
};

/** Which way the vent line blows. */
export const drawFlow = (layout: SetLayout, port: PlacedPort | undefined): Shape[] => {
  if (layout.set.vent === null || port === undefined) return [];
  const { middle, out } = ventPath(layout, port);
  const u = layout.detail;
  const tip = out + 26 * u;
  return [
    stroke('thin', polyline([out + 10 * u, middle], [tip - 6 * u, middle])),
    seen(
      polyline([tip, middle], [tip - 8 * u, middle - 2.8 * u], [tip - 8 * u, middle + 2.8 * u]),
      'solid',
      'none',
    ),
  ];
};
