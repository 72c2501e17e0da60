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
  /** The name lets the library find a font again that it has opened before. */
  font(font: unknown, name: string): Painter;
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
  readonly postscriptName: string;
  readonly unitsPerEm: number;
  layout(text: string, features: Readonly<Record<string, boolean>>): { readonly advanceWidth: number };
}

const isLayoutFont = (font: unknown): font is LayoutFont =>
  typeof font === 'object' && font !== null && 'layout' in font && 'unitsPerEm' in font;

/** A weight of Archivo that has been loaded for this document. */
const labelFont = (weight: 400 | 600 | 800): LayoutFont | undefined => {
  const { data } = Font.getFont({ fontFamily: 'Archivo', fontWeight: weight });
  return isLayoutFont(data) ? data : undefined;
};

const features = { tnum: true, lnum: true } as const;
const featureNames = ['tnum', 'lnum'] as const;

const widthOf = (font: LayoutFont, text: string, size: number): number =>
  (font.layout(text, features).advanceWidth / font.unitsPerEm) * size;

/** The text on at most so many lines of a width; what does not fit ends with an ellipsis. */
const broken = (
  font: LayoutFont,
  text: string,
  room: { size: number; width: number; lines: number },
): string[] => {
  const fits = (line: string): boolean => widthOf(font, line, room.size) <= room.width;
  if (fits(text)) return [text];
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  const kept = lines.slice(0, room.lines);
  let end = lines.length > room.lines ? `${kept.at(-1) ?? ''}…` : (kept.at(-1) ?? '');
  while (end.length > 1 && !fits(end)) end = `${end.slice(0, -2).trimEnd()}…`;
  return [...kept.slice(0, -1), end];
};

interface Line {
  /** Left end of the first base line. */
  readonly at: Point;
  readonly size: number;
  readonly weight: 400 | 600 | 800;
  readonly width: number;
  readonly colour?: string;
  readonly lines?: number;
}

/** A text from a point to the right, shortened to its room. */
export const paintLine = (painter: Painter, text: string, line: Line): void => {
  const font = labelFont(line.weight);
  const shown = printText(text);
  if (font === undefined || shown === '') return;
  const { size, width, lines = 1 } = line;
  painter
    .save()
    .fillColor(line.colour ?? ink.ink)
    .font(font, font.postscriptName)
    .fontSize(size);
  broken(font, shown, { size, width, lines }).forEach((part, i) => {
    const y = line.at[1] + i * size * 1.12;
    painter.text(part, line.at[0], y, { lineBreak: false, baseline: 'alphabetic', features: featureNames });
  });
  painter.restore();
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
  const font = labelFont(600);
  if (font === undefined) return;
  const shown = printText(text);
  const width = widthOf(font, shown, size);
  const [x, y] = [at[0] - width / 2, at[1]];
  painter.save();
  if (halo === true)
    painter
      .fillColor(ink.sheet)
      .rect(x - 1.2, y - size * 0.76, width + 2.4, size * 0.92)
      .fill();
  painter
    .fillColor(colour ?? ink.ink)
    .font(font, font.postscriptName)
    .fontSize(size);
  painter.text(shown, x, y, { lineBreak: false, baseline: 'alphabetic', features: featureNames });
  painter.restore();
};
