import { arc, bothSides, box, chain, type Contour, mirrored, polyline, reversed } from './contour.js';
import { wallLine } from './draw-vessel.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { circle, seen, seenBox } from './shape.js';
import { stirrerEnd } from './stirrer-end.js';

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

/** Half a turn of a ribbon as a band between two cosine lines; `from` and `to` in turns. */
const ribbon = (layout: SetLayout, span: { from: number; to: number; start: number }): Shape => {
  const { diameter, bladeWidth } = layout.set.stirrer ?? { diameter: 0, bladeWidth: 0 };
  const [top, bottom] = ribbonSpan(layout);
  const band = Math.max(bladeWidth * 0.55, (bottom - top) * 0.05);
  const steps = 24;
  const at = (i: number, lift: number): readonly [number, number] => {
    const turn = span.from + ((span.to - span.from) * i) / steps;
    const x = (diameter / 2) * Math.cos(2 * Math.PI * (turn + span.start));
    return [x, top + (bottom - top - band) * turn + lift];
  };
  const line = (lift: number): Contour => Array.from({ length: steps + 1 }, (_, i) => ({ to: at(i, lift) }));
  return seen(chain(line(0), reversed(line(band))), 'part', 'fine');
};

const ribbonSpan = (layout: SetLayout): readonly [number, number] => [
  layout.cylinder * 0.24,
  stirrerEnd(layout),
];

/** Two ribbons of one turn half a turn apart: of each, one half lies before the shaft and one behind. */
const ribbonHalves = (layout: SetLayout, side: 'before' | 'behind'): Shape[] => {
  const [one, other] = [
    { from: 0, to: 0.5 },
    { from: 0.5, to: 1 },
  ];
  const [first, second] = side === 'before' ? [one, other] : [other, one];
  return [ribbon(layout, { ...first, start: 0 }), ribbon(layout, { ...second, start: 0.5 })];
};

/** What of a stirrer lies behind the shaft. */
export const drawStirrerBehind = (layout: SetLayout): Shape[] => {
  const { stirrer } = layout.set;
  if (stirrer?.impeller !== 'double helical ribbon') return [];
  const [top, bottom] = ribbonSpan(layout);
  const r = stirrer.diameter / 2;
  const edge = Math.max(0.6, r * 0.022);
  const struts = [0.02, 0.26, 0.5, 0.74, 0.97].map((t) => top + (bottom - top) * t);
  return [
    ...ribbonHalves(layout, 'behind'),
    ...struts.map((y) => seenBox([-r * 0.96, y - edge], [r * 0.96, y + edge])),
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
      return ribbonHalves(layout, 'before');
    case 'magnetic bar':
      return magneticBar(layout);
  }
};
