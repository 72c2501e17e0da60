/** @jsxRuntime automatic */
import { Canvas } from '@react-pdf/renderer';
import { polyline } from '../drawings/contour.js';
import type { CheckRow } from '../views/check-rows.js';
import { paint, type Painter, trace } from './painter.js';
import { ink, px, statusInk } from './print-style.js';

const width = px(98);
const height = px(13);
const middle = height / 2;
/** The scale ends at 130 %, so that the limits of all rows stand one under the other. */
const end = 1.3;
const limit = width / end;

/** What is met stands back behind what is not. */
const tones = { ...statusInk, met: ink.ink2 };

const paintBar = (painter: Painter, { status, utilisation }: CheckRow): void => {
  const tone = tones[status];
  const line = (
    x1: number,
    y1: number,
    rest: { x2: number; y2: number; colour: string; width: number },
  ): void => {
    paint(painter, { pen: { colour: rest.colour, width: rest.width } }, () => {
      trace(painter, polyline([x1, y1], [rest.x2, rest.y2]));
    });
  };
  line(0, middle, { x2: width, y2: middle, colour: ink.hair, width: 0.7 });
  if (status === 'not decidable')
    paint(painter, { pen: { colour: tone, width: 0.7, dash: [2, 1.4] } }, () => {
      painter.rect(0.4, middle - 2.4, limit - 1.8, 4.8);
    });
  else if (utilisation !== null) {
    const used = Math.min(end, Math.max(0, utilisation)) * limit;
    paint(painter, { fill: tone }, () => {
      painter.rect(0, middle - 2.3, Math.max(0.4, Math.min(used, limit - 1.2)), 4.6);
    });
    for (let x = limit + 1.6; x + 1 < used; x += 2.6)
      line(x, middle + 2.3, { x2: Math.min(x + 3.2, used), y2: middle - 2.3, colour: tone, width: 0.9 });
  }
  line(limit, 0.4, { x2: limit, y2: height - 0.4, colour: ink.ink, width: 1.5 });
};

/** Share of the limit that is used: short of the heavy stroke where met, hatched past it; empty where nothing divides. */
export const CheckBar = ({ row }: { row: CheckRow }) =>
  row.utilisation === null && row.status !== 'not decidable' ? null : (
    <Canvas
      style={{ width, height }}
      paint={(painter: Painter) => {
        paintBar(painter, row);
        return null;
      }}
    />
  );
