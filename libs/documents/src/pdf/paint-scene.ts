import type { Callout, Sheet } from '../drawings/arrange-sheet.js';
import { type Contour, flattened, type Point, polyline } from '../drawings/contour.js';
import { hatchGrounds, lineStyles } from '../drawings/drawing-style.js';
import type { Dimension, Fill, Hatch, LineType, Scene, Shape } from '../drawings/scene.js';
import { statusKeys } from '../drawings/status-mark.js';
import { clearHeight } from '../drawings/svg-annotations.js';
import { hatchLines } from './hatch-lines.js';
import { paintMark } from './paint-mark.js';
import { paint, type Painter, paintLabel, type Pen, trace } from './painter.js';
import { ink, ptPerMm, px } from './print-style.js';

/** Spacing and width of hatch lines on paper [pt]. */
const hatchUnit = 0.78 * ptPerMm;
const hatchPen = 0.24;

const plain: Readonly<Record<Exclude<Fill, object>, string | undefined>> = {
  part: ink.part,
  solid: ink.ink,
  gas: ink['w-gas'],
  heat: ink['w-heat'],
  water: ink['w-water'],
  magnet: ink.mag,
  'counter magnet': ink.mag2,
  sheet: ink.sheet,
  none: undefined,
};

const groundOf = (fill: Fill): string | undefined =>
  typeof fill === 'object' ? ink[hatchGrounds[fill.material]] : plain[fill];

const penOf = (line: LineType, weight: number): Pen | undefined => {
  if (line === 'none') return undefined;
  const { mm, colour, dash } = lineStyles[line];
  return {
    colour: ink[colour],
    width: mm * ptPerMm * weight,
    ...(dash === undefined ? {} : { dash: dash.map((length) => length * 0.6) }),
  };
};

const toSheet = ({ scale, origin }: Sheet, [x, y]: Point): Point => [
  origin[0] + scale * x,
  origin[1] + scale * y,
];

const onSheet = (contour: Contour, sheet: Sheet): Contour =>
  contour.map(({ to, control }) =>
    control === undefined
      ? { to: toSheet(sheet, to) }
      : { to: toSheet(sheet, to), control: [toSheet(sheet, control[0]), toSheet(sheet, control[1])] },
  );

const paintHatch = (painter: Painter, polygon: readonly Point[], hatch: Hatch): void => {
  const colour = hatch.material === 'liquid' ? ink.hl : ink.ink2;
  paint(painter, { pen: { colour, width: hatchPen } }, () => {
    for (const line of hatchLines(polygon, hatch, hatchUnit)) trace(painter, polyline(...line));
  });
};

const ring = ([x, y]: Point, radius: number): Point[] =>
  Array.from({ length: 24 }, (_, i) => {
    const angle = (i / 24) * 2 * Math.PI;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

const paintShape = (painter: Painter, shape: Shape, at: { sheet: Sheet; weight: number }): void => {
  const { sheet, weight } = at;
  switch (shape.kind) {
    case 'area': {
      const contour = onSheet(shape.contour, sheet);
      const first = contour[0];
      const closed: Contour = first === undefined ? contour : [...contour, { to: first.to }];
      const pen = penOf(shape.line, weight);
      const hatched = typeof shape.fill === 'object';
      paint(painter, { fill: groundOf(shape.fill), pen: hatched ? undefined : pen }, () => {
        trace(painter, closed);
      });
      if (typeof shape.fill === 'object') {
        paintHatch(painter, flattened(contour), shape.fill);
        paint(painter, { pen }, () => {
          trace(painter, closed);
        });
      }
      return;
    }
    case 'stroke':
      paint(painter, { pen: penOf(shape.line, weight) }, () => {
        for (const contour of shape.contours) trace(painter, onSheet(contour, sheet));
      });
      return;
    case 'circle': {
      const centre = toSheet(sheet, shape.centre);
      const radius = shape.radius * sheet.scale;
      paint(painter, { fill: groundOf(shape.fill), pen: penOf(shape.line, weight) }, () => {
        painter.circle(centre[0], centre[1], radius);
      });
      if (typeof shape.fill === 'object' && radius > 3) paintHatch(painter, ring(centre, radius), shape.fill);
      return;
    }
    case 'text': {
      const size = shape.size * sheet.scale;
      const [x, y] = toSheet(sheet, shape.at);
      paintLabel(painter, shape.text, { at: [x, y + size * 0.35], size, halo: true });
    }
  }
};

const thin: Pen = { colour: ink.ink2, width: 0.18 * ptPerMm };
const figureSize = px(10.5);

const arrow = (painter: Painter, tip: Point, [dx, dy]: Point): void => {
  const [back, side]: [Point, Point] = [
    [tip[0] + dx * 5, tip[1] + dy * 5],
    [dy * 1.4, dx * 1.4],
  ];
  paint(painter, { fill: ink.ink2 }, () => {
    painter.polygon(tip, [back[0] + side[0], back[1] + side[1]], [back[0] - side[0], back[1] - side[1]]);
  });
};

const paintDimension = (painter: Painter, dimension: Dimension, sheet: Sheet): void => {
  const [[x1, y1], [x2, y2]] = [toSheet(sheet, dimension.from), toSheet(sheet, dimension.to)];
  const lines = (...each: readonly (readonly [Point, Point])[]): void => {
    paint(painter, { pen: thin }, () => {
      for (const [from, to] of each) trace(painter, polyline(from, to));
    });
  };
  if (dimension.kind === 'vertical') {
    const x = sheet.origin[0] + sheet.scale * dimension.at;
    const past = (end: number): number => x + (end < x ? 3 : -3);
    lines(
      [
        [x1, y1],
        [past(x1), y1],
      ],
      [
        [x2, y2],
        [past(x2), y2],
      ],
      [
        [x, y1],
        [x, y2],
      ],
    );
    arrow(painter, [x, y1], [0, 1]);
    arrow(painter, [x, y2], [0, -1]);
    painter
      .save()
      .translate(x - 2.4, clearHeight(x, [y1, y2], sheet))
      .rotate(-90);
    paintLabel(painter, dimension.text, { at: [0, 0], size: figureSize, colour: ink.ink2, halo: true });
    painter.restore();
    return;
  }
  const y = sheet.origin[1] + sheet.scale * dimension.at;
  lines(
    [
      [x1, y1],
      [x1, y + 3],
    ],
    [
      [x2, y2],
      [x2, y + 3],
    ],
    [
      [x1, y],
      [x2, y],
    ],
  );
  arrow(painter, [x1, y], [1, 0]);
  arrow(painter, [x2, y], [-1, 0]);
  paintLabel(painter, dimension.text, {
    at: [(x1 + x2) / 2, y - 2.4],
    size: figureSize,
    colour: ink.ink2,
    halo: true,
  });
};

const paintBalloon = (painter: Painter, { line, number, slot }: Callout): void => {
  const [[outer], [inner, y]] = line;
  const centre: Point = [(outer + inner) / 2, y];
  const open = slot.status !== null && slot.status !== 'met' ? slot.status : null;
  const colour = open === null ? ink.ink : ink[statusKeys[open]];
  paint(painter, { pen: { colour, width: 0.5 } }, () => {
    trace(painter, polyline(...line.slice(1)));
  });
  if (open === null)
    paint(painter, { fill: ink.ink }, () => {
      painter.circle(line[3][0], line[3][1], 1.2);
    });
  else paintMark(painter, open, { at: line[3], size: 8 });
  paint(painter, { fill: ink.sheet, pen: { colour: ink.ink, width: 0.7 } }, () => {
    painter.circle(centre[0], centre[1], 7);
  });
  paintLabel(painter, String(number), { at: [centre[0], y + 2.8], size: 8 });
};

/** Puts a scene on paper: lines in the widths of ISO 128-2, hatches as lines, dimensions, numbers with leaders. */
export const paintScene = (painter: Painter, scene: Scene, sheet: Sheet): void => {
  const weight = Math.min(1, 0.5 + sheet.scale);
  for (const { shapes } of scene.parts)
    for (const shape of shapes) paintShape(painter, shape, { sheet, weight });
  for (const dimension of scene.dimensions) paintDimension(painter, dimension, sheet);
  for (const { at, text } of scene.labels) {
    const [x, y] = toSheet(sheet, at);
    paintLabel(painter, text, { at: [x, y + 12], size: px(11.5) });
  }
  for (const callout of sheet.callouts) paintBalloon(painter, callout);
};
