import { arc, box, chain, type Contour, mirrored, polyline, reversed } from './contour.js';

import type { PlacedPort } from './place-fittings.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, cut, seen, seenBox, stroke } from './shape.js';
import { stirrerEnd } from './stirrer-end.js';

interface Winding {
  readonly radius: number;
  readonly tube: number;
  readonly pitch: number;
  readonly top: number;
  readonly turns: number;
}

/** Where the coil lies: as low as the end allows, closer wound where it has little room. */
const windingOf = (layout: SetLayout): Winding | null => {
  const { coil } = layout.set;
  if (coil === null) return null;
  const turns = Math.max(1, Math.round(coil.turns));
  const bottom = layout.cylinder - coil.tube * 0.5 - 4 * layout.detail;
  const room = Math.max(bottom - 16 * layout.detail, coil.tube);
  const pitch = Math.min(2.1 * coil.tube, room / turns);
  return { radius: coil.diameter / 2, tube: coil.tube, pitch, top: bottom - pitch * (turns - 0.5), turns };
};

const rearTurn = (w: Winding, i: number): Shape => {
  const [left, right, h] = [w.top + i * w.pitch, w.top + (i + 0.5) * w.pitch, w.tube / 2];
  const line = (dy: number): Contour => [
    { to: [-w.radius, left + dy] },
    {
      to: [w.radius, right + dy],
      control: [
        [-w.radius * 0.45, left + dy],
        [w.radius * 0.45, right + dy],
      ],
    },
  ];
  return seen(chain(line(-h), reversed(line(h))), 'part', 'fine');
};

/** A tube in view from the cover downwards, round at its end. */
const tube = (x: number, half: number, span: { from: number; to: number }): Shape =>
  seen(
    chain(
      polyline([x + half, span.from]),
      arc({ centre: [x, span.to - half], radius: half, from: 0, to: 180 }),
      polyline([x - half, span.from]),
    ),
    'part',
    'fine',
  );

/** Rear halves of the turns with feed and return. */
export const drawCoilBehind = (layout: SetLayout, ports: readonly PlacedPort[]): Shape[] => {
  const winding = windingOf(layout);
  if (winding === null) return [];
  const last = winding.top + (winding.turns - 0.5) * winding.pitch;
  const ends = ports.filter((port) => port.kind === 'coil');
  return [
    ...Array.from({ length: winding.turns }, (_, i) => rearTurn(winding, i)),
    ...ends.map((port, i) =>
      tube(port.x, winding.tube / 2, { from: 0, to: (i === 0 ? winding.top : last) + winding.tube / 2 }),
    ),
  ];
};

/** The turns where the section cuts them. */
export const drawCoilCut = (layout: SetLayout): Shape[] => {
  const winding = windingOf(layout);
  if (winding === null) return [];
  const { radius, tube: od, pitch, top, turns } = winding;
  const bore = od * 0.33;
  const material = layout.set.coil?.body ?? 'steel';
  return Array.from({ length: turns }, (_, i) => [
    [-radius, top + i * pitch] as const,
    [radius, top + (i + 0.5) * pitch] as const,
  ])
    .flat()
    .flatMap((centre): Shape[] => [
      circle(centre, od / 2, { line: 'edge', fill: { material, turned: true, close: true } }),
      circle(centre, bore, { line: 'thin', fill: 'water' }),
    ]);
};

/** Baffles behind the plane of the section. */
export const drawBaffles = (layout: SetLayout): Shape[] => {
  const { baffles } = layout.set;
  if (baffles === null) return [];
  const gap = Math.max(1, baffles.width * 0.12);
  const [from, to] = [layout.inner - gap - baffles.width, layout.inner - gap];
  const [top, bottom] = [10 * layout.detail, layout.cylinder * 0.98];
  return [seenBox([from, top], [to, bottom]), seenBox([-to, top], [-from, bottom])];
};

const dipTube = (port: PlacedPort, to: number): Shape[] => {
  const half = Math.max(port.port.diameter * 0.3, 0.7);
  const line = polyline(
    [port.x - half, 0],
    [port.x - half, to - half],
    [port.x + half, to],
    [port.x + half, 0],
  );
  return [seen(line, 'part', 'fine'), stroke('thin', polyline([port.x, 2], [port.x, to - 2 * half]))];
};

/** What hangs from a port into the vessel. */
export const drawBelowPort = (layout: SetLayout, port: PlacedPort): Shape[] => {
  const { set, depth } = layout;
  const clear = stirrerEnd(layout) - (set.stirrer?.bladeWidth ?? 0) - 8 * layout.detail;
  const half = Math.max(port.port.diameter * 0.3, 0.7);
  switch (port.kind) {
    case 'gasInlet':
      return set.gasInlet === 'dip tube' ? dipTube(port, Math.max(clear, depth * 0.5)) : [];
    case 'sampling':
      return dipTube(port, Math.max(clear - 6 * layout.detail, depth * 0.45));
    case 'temperatureProbe':
      return set.probe === 'probe in the bottom valve'
        ? []
        : [tube(port.x, half, { from: 0, to: Math.max(clear - 2 * layout.detail, depth * 0.5) })];
    case 'processProbe':
      return [tube(port.x, half * 1.3, { from: 0, to: Math.max(clear - 10 * layout.detail, depth * 0.45) })];
    default:
      return [];
  }
};

/** A basket for pellets around the stirrer. */
export const drawBasket = (layout: SetLayout): Shape[] => {
  if (!layout.set.basket) return [];
  const r = layout.inner * 0.78;
  const end = layout.cylinder;
  const start = end - layout.inner * 0.9;
  const wall = r * 0.14;
  const mesh = (x1: number, x2: number): Contour[] =>
    Array.from({ length: 9 }, (_, i) => start + ((end - start) * (i + 0.5)) / 9).map((y) =>
      polyline([x1, y + wall * 0.5], [x2, y - wall * 0.5]),
    );
  const right = box([r - wall, start], [r, end]);
  return [
    seen(right, 'part', 'fine'),
    seen(mirrored(right), 'part', 'fine'),
    stroke('thin', ...mesh(r - wall, r), ...mesh(-r, wall - r)),
  ];
};

/** Valve under the bottom port. */
export const drawBottomValve = (layout: SetLayout): Shape[] => {
  const { bottomValve, vessel } = layout.set;
  if (bottomValve === null) return [];
  const u = layout.detail;
  const bore = vessel.bottomPort ?? bottomValve.diameter;
  const start =
    layout.bottom + (layout.jacket === null ? 0 : layout.jacket.gap + layout.jacket.wall) + 16 * u;
  const half = bore / 2 + 8 * u;
  const body = bottomValve.kind === 'ball valve' ? 30 * u + bore * 0.8 : 40 * u + bore;
  const flange = (y: number): Shape => seenBox([-half - 3 * u, y], [half + 3 * u, y + 6 * u]);
  if (bottomValve.kind === 'ball valve')
    return [
      flange(start),
      seen(
        polyline([-half, start + 6 * u], [half, start + 6 * u], [half, start + body], [-half, start + body]),
      ),
      circle([0, start + 3 * u + body / 2], bore * 0.7 + 2 * u),
      flange(start + body),
      seenBox([half, start + body / 2 - 2 * u], [half + 26 * u, start + body / 2 + 5 * u]),
    ];
  const spindle = bore * 0.36;
  return [
    flange(start),
    cut(
      polyline(
        [bore / 2, start + 6 * u],
        [half, start + 6 * u],
        [half, start + body],
        [bore / 2, start + body],
      ),
      'steel',
    ),
    cut(
      polyline(
        [-bore / 2, start + 6 * u],
        [-half, start + 6 * u],
        [-half, start + body],
        [-bore / 2, start + body],
      ),
      'steel',
    ),
    seen(
      polyline(
        [-bore / 2, layout.depth],
        [bore / 2, layout.depth],
        [spindle, layout.depth + bore * 0.4],
        [spindle, start + body],
        [-spindle, start + body],
        [-spindle, layout.depth + bore * 0.4],
      ),
    ),
    seenBox([half, start + 12 * u], [half + 16 * u, start + 12 * u + bore * 0.6]),
    flange(start + body),
    seenBox([-half * 0.7, start + body + 6 * u], [half * 0.7, start + body + 22 * u]),
  ];
};
