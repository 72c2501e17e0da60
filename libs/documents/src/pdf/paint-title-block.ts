import type { TitleBlockView } from '../views/issue.js';
import { polyline } from '../drawings/contour.js';
import { paint, type Painter, paintLine, trace } from './painter.js';
import { ink, px } from './print-style.js';

export interface TitleBlockPlace {
  readonly block: TitleBlockView;
  /** What this sheet is, under the title. */
  readonly subtitle: string;
  readonly scale: string;
  /** Number of this sheet and of all, `1/6`. */
  readonly sheet: string;
  readonly width: number;
  readonly height: number;
}

interface Cell {
  readonly label: string;
  readonly main: string;
  readonly note?: string;
  /** Share of the width, of twelve. */
  readonly share: number;
}

const upper = px(55);

const rowsOf = ({
  block,
  subtitle,
  scale,
  sheet,
}: TitleBlockPlace): readonly [readonly Cell[], readonly Cell[]] => [
  [
    { label: 'Owner', main: block.owner, note: block.ownerPlace, share: 4 },
    { label: 'Client', main: block.client, note: block.clientNote, share: 4 },
    { label: 'Title', main: block.title, note: subtitle, share: 4 },
  ],
  [
    block.drawnBy === ''
      ? { label: 'Date', main: block.drawnOn, share: 2 }
      : { label: 'Drawn', main: block.drawnBy, note: block.drawnOn, share: 2 },
    { label: 'Released', main: block.released, note: block.releasedNote, share: 2.8 },
    { label: 'Scale, projection', main: scale, note: 'A4', share: 2.2 },
    { label: 'Document', main: block.document, note: block.basis, share: 2.9 },
    { label: 'Revision', main: block.revision, share: 1 },
    { label: 'Sheet', main: sheet, share: 1.1 },
  ],
];

const rule = (painter: Painter, width: number, ends: readonly [number, number, number, number]): void => {
  paint(painter, { pen: { colour: ink.ink, width } }, () => {
    trace(painter, polyline([ends[0], ends[1]], [ends[2], ends[3]]));
  });
};

const paintUpper = (painter: Painter, cell: Cell, at: { x: number; width: number; owner: boolean }): void => {
  const x = at.x + px(8);
  const width = at.width - px(14);
  const long = !at.owner && cell.main.length > 26;
  paintLine(painter, cell.label, { at: [x, px(12)], size: px(9.5), weight: 400, width, colour: ink.ink2 });
  paintLine(painter, cell.main, {
    at: [x, long ? px(25) : px(30)],
    size: px(at.owner ? 17 : long ? 11.5 : 14),
    weight: at.owner ? 800 : 600,
    width,
    lines: long ? 2 : 1,
  });
  paintLine(painter, cell.note ?? '', {
    at: [x, px(49.5)],
    size: px(10),
    weight: 400,
    width,
    colour: ink.ink2,
  });
};

const paintLower = (painter: Painter, cell: Cell, at: { x: number; width: number }): void => {
  const x = at.x + px(8);
  const width = at.width - px(12);
  paintLine(painter, cell.label, {
    at: [x, upper + px(12)],
    size: px(9.5),
    weight: 400,
    width,
    colour: ink.ink2,
  });
  paintLine(painter, cell.main, { at: [x, upper + px(28)], size: px(12), weight: 600, width });
  paintLine(painter, cell.note ?? '', {
    at: [x, upper + px(42)],
    size: px(10),
    weight: 400,
    width,
    colour: ink.ink2,
  });
};

/** Sign of first-angle projection, ISO 5456-2, with its left end at a point. */
const paintProjection = (painter: Painter, x: number, y: number): void => {
  const pen = { colour: ink.ink, width: 0.7 };
  const k = px(0.9);
  paint(painter, { pen }, () => {
    painter.polygon([x, y - 2.6 * k], [x + 11 * k, y - 4.5 * k], [x + 11 * k, y + 4.5 * k], [x, y + 2.6 * k]);
  });
  for (const radius of [4.5, 2.4])
    paint(painter, { pen }, () => {
      painter.circle(x + 19 * k, y, radius * k);
    });
};

/** The block at the foot of every sheet: owner, client, title; who, whether released, scale, document, revision, sheet. */
export const paintTitleBlock = (painter: Painter, place: TitleBlockPlace): void => {
  const { width, height } = place;
  paint(painter, { fill: ink.sheet, pen: { colour: ink.ink, width: px(1.6) } }, () => {
    painter.rect(px(0.8), px(0.8), width - px(1.6), height - px(1.6));
  });
  rule(painter, px(0.7), [0, upper, width, upper]);
  const [first, second] = rowsOf(place);
  const unit = width / 12;
  let x = 0;
  for (const cell of first) {
    if (x > 0) rule(painter, px(0.7), [x, 0, x, upper]);
    paintUpper(painter, cell, { x, width: cell.share * unit, owner: x === 0 });
    x += cell.share * unit;
  }
  x = 0;
  for (const cell of second) {
    if (x > 0) rule(painter, px(0.7), [x, upper, x, height]);
    paintLower(painter, cell, { x, width: cell.share * unit });
    if (cell.label === 'Scale, projection')
      paintProjection(painter, x + cell.share * unit - px(33), upper + px(38));
    x += cell.share * unit;
  }
};
