import { arc, bothSides, box, chain, type Contour, mirrored, polyline, reversed } from './contour.js';
import { wallLine } from './draw-vessel.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, seen, seenBox, stroke } from './shape.js';

/** Impellers that follow the wall sit a little above the bottom; the others a third of their diameter. */
const closeImpellers = new Set(['anchor', 'double helical ribbon']);

/** Lowest point of the stirrer, below the sealing plane [mm]. */
export const stirrerEnd = (layout: SetLayout): number => {
  const { stirrer, shaft } = layout.set;
  const { depth, neckTop, inner } = layout;
  if (stirrer === null) return depth * 0.9;
  if (stirrer.impeller === 'magnetic bar') return depth - 0.5 * layout.detail;
  if (closeImpellers.has(stirrer.impeller)) return depth - (inner - stirrer.diameter / 2) - 1;
  const half = stirrer.bladeWidth / 2;
  const wanted = depth - Math.max(stirrer.diameter / 3 - half, 0.03 * depth);
  if (shaft === null) return wanted;
  const reached = layout.coverTop * 0.5 + neckTop * 0.1 + shaft.length;
  return Math.min(depth - 0.02 * depth, Math.max(reached, depth * 0.5));
};

const hub = (layout: SetLayout, y: number, half: number): Shape => {
  const r = layout.shaftRadius * 1.7;
  return seenBox([-r, y - half], [r, y + half]);
};

const turbine = (layout: SetLayout, y: number): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [r, h] = [diameter / 2, bladeWidth / 2];
  const inner = r * 0.5;
  const edge = Math.max(0.8, r * 0.06);
  return [
    ...bothSides(box([inner, y - h], [r, y + h])).map((blade) => seen(blade)),
    ...bothSides(box([r * 0.34 - edge, y - h], [r * 0.34 + edge, y + h])).map((blade) => seen(blade)),
    seenBox([-r * 0.75, y - edge], [r * 0.75, y + edge]),
    hub(layout, y, h * 1.2),
  ];
};

const pitchedBlades = (layout: SetLayout, y: number): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [r, h] = [diameter / 2, bladeWidth * 0.36];
  const lean = bladeWidth * 0.2;
  const side = polyline(
    [layout.shaftRadius, y + h - lean],
    [r, y + h],
    [r, y + h - 2.2 * lean],
    [layout.shaftRadius, y - h],
  );
  const front = polyline(
    [-lean * 1.6, y + h],
    [lean * 0.4, y + h],
    [lean * 1.6, y - h],
    [-lean * 0.4, y - h],
  );
  return [...bothSides(side).map((blade) => seen(blade)), hub(layout, y, h * 1.1), seen(front)];
};

const paddle = (layout: SetLayout, y: number): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [r, h] = [diameter / 2, bladeWidth / 2];
  return [seenBox([-r, y - h], [r, y + h]), hub(layout, y, h * 0.8)];
};

const propeller = (layout: SetLayout, y: number): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [r, h] = [diameter / 2, Math.max(bladeWidth, diameter * 0.12) / 2];
  const blade: Contour = [
    { to: [layout.shaftRadius, y - h * 0.5] },
    {
      to: [r, y - h],
      control: [
        [r * 0.4, y - h * 1.3],
        [r * 0.8, y - h * 1.4],
      ],
    },
    {
      to: [r * 0.95, y + h * 0.7],
      control: [
        [r * 1.02, y - h * 0.4],
        [r * 1.02, y + h * 0.3],
      ],
    },
    {
      to: [layout.shaftRadius, y + h * 0.9],
      control: [
        [r * 0.75, y + h * 1.1],
        [r * 0.4, y + h],
      ],
    },
  ];
  return [seen(blade), seen(mirrored(blade)), hub(layout, y, h * 1.1)];
};

const hollowTurbine = (layout: SetLayout, y: number): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [r, h, s] = [diameter / 2, bladeWidth / 2, layout.shaftRadius];
  const hubLine = polyline(
    [s * 1.6, y - h * 1.3],
    [s * 1.8, y - h],
    [s * 1.8, y + h],
    [s * 1.3, y + h * 1.4],
  );
  const edge = Math.max(0.6, r * 0.05);
  return [
    ...bothSides(box([Math.max(r * 0.56, s * 1.8), y - h], [r, y + h])).map((blade) => seen(blade)),
    seenBox([-r * 0.72, y - edge * 2], [r * 0.72, y + edge * 2]),
    seen(chain(hubLine, reversed(mirrored(hubLine)))),
    ...[1, -1].map((side) => circle([side * s * 0.8, y + h * 0.6], s * 0.27, { fill: 'solid' })),
    circle([0, layout.detail * 12], s * 0.3, { fill: 'solid' }),
  ];
};

const anchor = (layout: SetLayout): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const gap = layout.inner - diameter / 2;
  const arm = Math.min(Math.max(bladeWidth, diameter * 0.05), diameter * 0.12);
  const top = layout.cylinder * 0.42;
  const outerLine = wallLine(layout, { top, side: -gap, end: -gap });
  const innerLine = wallLine(layout, { top, side: -gap - arm, end: -gap - arm });
  const y = layout.cylinder * 0.62;
  return [
    seen(chain(innerLine, reversed(mirrored(innerLine)), mirrored(outerLine), reversed(outerLine))),
    seenBox([-diameter / 2 + arm, y - arm * 0.4], [diameter / 2 - arm, y + arm * 0.4]),
    hub(layout, layout.depth - gap - arm / 2, arm * 0.9),
  ];
};

/** Half a turn of a ribbon, leaning to one side, as a band between two sine lines. */
const ribbon = (layout: SetLayout, span: { top: number; bottom: number; phase: number }): Shape => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const r = diameter / 2;
  const steps = 48;
  const band = Math.max(bladeWidth * 0.55, (span.bottom - span.top) * 0.05);
  const at = (i: number, lift: number): readonly [number, number] => {
    const t = i / steps;
    return [
      r * Math.cos(span.phase + 2 * Math.PI * t),
      span.top + (span.bottom - span.top - band) * t + lift,
    ];
  };
  const line = (lift: number): Contour => Array.from({ length: steps + 1 }, (_, i) => ({ to: at(i, lift) }));
  return seen(chain(line(0), reversed(line(band))), 'part', 'fine');
};

const helicalRibbons = (layout: SetLayout): Shape[] => {
  const { diameter } = layout.set.stirrer ?? { diameter: 0 };
  const r = diameter / 2;
  const [top, bottom] = [layout.cylinder * 0.24, stirrerEnd(layout)];
  const edge = Math.max(1, r * 0.03);
  const struts = [0.02, 0.26, 0.5, 0.74, 0.97].map((t) => top + (bottom - top) * t);
  return [
    ...struts.map((y) => seenBox([-r * 0.96, y - edge], [r * 0.96, y + edge])),
    ribbon(layout, { top, bottom, phase: 0 }),
    ribbon(layout, { top, bottom, phase: Math.PI }),
  ];
};

const magneticBar = (layout: SetLayout): Shape[] => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [r, h] = [diameter / 2, Math.max(bladeWidth, diameter * 0.2) / 2];
  const y = layout.depth - h - 0.5 * layout.detail;
  const bar = chain(
    polyline([0, y - h]),
    arc({ centre: [r - h, y], radius: h, from: -90, to: 90 }),
    polyline([0, y + h]),
  );
  return [
    seen(chain(bar, reversed(mirrored(bar)))),
    seenBox([-r * 0.6, y - h * 0.45], [r * 0.6, y + h * 0.45], 'magnet'),
  ];
};

/** The impeller by its kind, with its true diameter and blade width. */
export const drawStirrer = (layout: SetLayout): Shape[] => {
  const { stirrer } = layout.set;
  if (stirrer === null) return [];
  const y = stirrerEnd(layout) - stirrer.bladeWidth / 2;
  switch (stirrer.impeller) {
    case 'disc turbine':
      return turbine(layout, y);
    case 'pitched blade turbine':
      return pitchedBlades(layout, y);
    case 'paddle':
      return paddle(layout, y);
    case 'propeller':
      return propeller(layout, y);
    case 'hollow shaft turbine':
      return hollowTurbine(layout, y);
    case 'anchor':
      return anchor(layout);
    case 'double helical ribbon':
      return helicalRibbons(layout);
    case 'magnetic bar':
      return magneticBar(layout);
  }
};

/** The shaft from the coupling to the stirrer, uncut; hollow for a gas-inducing stirrer. */
export const drawShaft = (layout: SetLayout): Shape[] => {
  const { stirrer, shaft, coupling } = layout.set;
  if (stirrer?.impeller === 'magnetic bar' || (shaft === null && coupling === null)) return [];
  const s = layout.shaftRadius;
  const end = stirrerEnd(layout) - (stirrer === null ? 0 : Math.min(stirrer.bladeWidth * 0.3, 4 * s));
  const start = layout.coverTop - (coupling === null ? 6 * layout.detail : 10 * layout.detail);
  const hollow =
    stirrer?.impeller === 'hollow shaft turbine'
      ? [
          stroke(
            'hidden',
            polyline([-0.42 * s, 18 * layout.detail], [-0.42 * s, end]),
            polyline([0.42 * s, 18 * layout.detail], [0.42 * s, end]),
          ),
        ]
      : [];
  return [seenBox([-s, start], [s, end]), ...hollow];
};
