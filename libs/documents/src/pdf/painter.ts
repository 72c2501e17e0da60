import { Font } from '@react-pdf/renderer';
import { type Contour, type Point } from '../drawings/contour.js';
import { ink } from './print-style.js';
import { printText } from './print-text.js';

/** What is used of the drawing surface of the PDF library, which leaves it untyped. */
export interface Painter {
  save(): Painter;
  restore(): Painter;
  translate(x: number, y: number): Painter;
  rotate(degrees: number): Painter;
  scale(factor: number): Painter;
  moveTo(x: number, y: number): Painter;
  lineTo(x: number, y: number): Painter;
  bezierCurveTo(...points: number[]): Painter;
  path(d: string): Painter;
  circle(x: number, y: number, radius: number): Painter;
  rect(x: number, y: number, width: number, height: number): Painter;
  polygon(...points: Point[]): Painter;
  lineWidth(width: number): Painter;
  lineJoin(join: 'round'): Painter;
  dash(lengths: readonly number[]): Painter;
  strokeColor(colour: string): Painter;
  strokeOpacity(opacity: number): Painter;
  fillColor(colour: string): Painter;
  fillOpacity(opacity: number): Painter;
  fill(): Painter;
  stroke(): Painter;
  fillAndStroke(): Painter;
  font(font: unknown): Painter;
  fontSize(size: number): Painter;
  text(text: string, x: number, y: number, options: object): Painter;
}

export interface Pen {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

/** Adds a contour to the current path. */
export const trace = (painter: Painter, contour: Contour): void => {
  contour.forEach(({ to, control }, i) => {
    if (i === 0) painter.moveTo(to[0], to[1]);
    else if (control === undefined) painter.lineTo(to[0], to[1]);
    else painter.bezierCurveTo(...control[0], ...control[1], ...to);
  });
};

/** Strokes and fills what `draw` adds to the path, and leaves pen and dashes as they were. */
export const paint = (
  painter: Painter,
  look: { readonly pen?: Pen | undefined; readonly fill?: string | undefined },
  draw: () => void,
): void => {
  const { pen, fill } = look;
  if (pen === undefined && fill === undefined) return;
  painter.save();
  if (pen !== undefined) {
    painter.lineWidth(pen.width).lineJoin('round').strokeColor(pen.colour);
    if (pen.dash !== undefined) painter.dash(pen.dash);
  }
  if (fill !== undefined) painter.fillColor(fill);
  draw();
  if (pen !== undefined && fill !== undefined) painter.fillAndStroke();
  else if (pen !== undefined) painter.stroke();
  else painter.fill();
  painter.restore();
};

interface LayoutFont {
  readonly unitsPerEm: number;
  layout(text: string, features: Readonly<Record<string, boolean>>): { readonly advanceWidth: number };
}

const isLayoutFont = (font: unknown): font is LayoutFont =>
  typeof font === 'object' && font !== null && 'layout' in font && 'unitsPerEm' in font;

/** The semibold that the sheet around has loaded. */
const labelFont = (): LayoutFont | undefined => {
  const { data } = Font.getFont({ fontFamily: 'Archivo', fontWeight: 600 });
  return isLayoutFont(data) ? data : undefined;
};

interface Label {
  readonly at: Point;
  readonly size: number;
  readonly colour?: string;
  /** Clears the ground behind the letters. */
  readonly halo?: boolean;
}

/** A text centred on a point at its base line. */
export const paintLabel = (painter: Painter, text: string, { at, size, colour, halo }: Label): void => {
  const font = labelFont();
  if (font === undefined) return;
  const shown = printText(text);
  const features = { tnum: true, lnum: true };
  const width = (font.layout(shown, features).advanceWidth / font.unitsPerEm) * size;
  const [x, y] = [at[0] - width / 2, at[1]];
  painter.save();
  if (halo === true)
    painter
      .fillColor(ink.sheet)
      .rect(x - 1.2, y - size * 0.76, width + 2.4, size * 0.92)
      .fill();
  painter
    .fillColor(colour ?? ink.ink)
    .font(font)
    .fontSize(size);
  painter.text(shown, x, y, { lineBreak: false, baseline: 'alphabetic', features: ['tnum', 'lnum'] });
  painter.restore();
};
