import type { Status } from '@flangewise/model';
import type { Point } from '../drawings/contour.js';
import { statusKeys, statusMarks } from '../drawings/status-mark.js';
import { paint, type Painter } from './painter.js';
import { ink } from './print-style.js';

const tone = (of: 'ink' | 'ground', status: Status): string =>
  of === 'ground' ? ink.sheet : ink[statusKeys[status]];

/** The mark of a state around a point; `size` is its width. */
export const paintMark = (painter: Painter, status: Status, place: { at: Point; size: number }): void => {
  painter
    .save()
    .translate(place.at[0], place.at[1])
    .scale(place.size / 16);
  for (const { d, fill, stroke, width, dash } of statusMarks[status])
    paint(
      painter,
      {
        fill: fill === 'none' ? undefined : tone(fill, status),
        pen:
          stroke === 'none'
            ? undefined
            : { colour: tone(stroke, status), width, ...(dash === undefined ? {} : { dash }) },
      },
      () => painter.path(d),
    );
  painter.restore();
};
