import type { SlotPath } from '@flangewise/model';
import { arrangeSheet, type Sheet, type SheetFrame } from './arrange-sheet.js';
import { figure, pathData } from './contour.js';
import { drawingStyle, hatchGrounds, lightVariables, lineClass } from './drawing-style.js';
import { hatchMotifs, hatchTurn } from './hatch-motif.js';
import type { Fill, Hatch, Part, Scene, Shape } from './scene.js';
import { statusKeys } from './status-mark.js';
import { calloutsSvg, dimensionsSvg, labelsSvg } from './svg-annotations.js';
import { escaped } from './svg-text.js';

export interface SvgOptions {
  /** Nominal size in pixels; lettering is not smaller than 11 px at that size. */
  readonly width: number;
  readonly height: number;
  readonly callouts?: SheetFrame['callouts'];
  readonly dimensions?: boolean;
  /** Makes every part and callout a link; without it they are groups with `data-slot`. */
  readonly href?: (path: SlotPath) => string;
  readonly selected?: SlotPath;
  /** Carries its own colours and style sheet: a file that stands alone. */
  readonly standalone?: boolean;
  /** Numbers of the slots where they come from several drawings of one system. */
  readonly numbers?: ReadonlyMap<SlotPath, number>;
  /** Prefix of ids, where several drawings share a page. */
  readonly idPrefix?: string;
}

const hatchId = ({ material, turned, close }: Hatch): string =>
  `${material}${turned ? '-t' : ''}${close ? '-c' : ''}`;

const patternOf = (hatch: Hatch, prefix: string, unit: number): string => {
  const motif = hatchMotifs[hatch.material];
  const { angle, spacing } = hatchTurn(hatch);
  const u = unit * spacing;
  const at = ([x, y]: readonly [number, number]): string => `${figure(x * u)} ${figure(y * u)}`;
  const strokes = motif.strokes.map(({ points, curved }) =>
    points
      .map((point, i) => (i === 0 ? 'M' : curved !== true ? 'L' : i % 2 === 1 ? 'Q' : ' ') + at(point))
      .join(''),
  );
  const [w, h] = [figure(motif.tile[0] * u), figure(motif.tile[1] * u)];
  const line = hatch.material === 'liquid' ? 'hl' : 'h';
  return `<pattern id="${prefix}${hatchId(hatch)}" width="${w}" height="${h}" patternUnits="userSpaceOnUse" patternTransform="rotate(${String(angle)})"><rect width="${w}" height="${h}" class="${hatchGrounds[hatch.material]}"/><path class="${line}" style="stroke-width:${figure(unit * 0.115)}" d="${strokes.join('')}"/></pattern>`;
};

const hatchesOf = (scene: Scene): Hatch[] => {
  const used = new Map<string, Hatch>();
  for (const shape of scene.parts.flatMap(({ shapes }) => shapes))
    if ((shape.kind === 'area' || shape.kind === 'circle') && typeof shape.fill === 'object')
      used.set(hatchId(shape.fill), shape.fill);
  return [...used.values()];
};

const look = (line: Shape & { kind: 'area' | 'circle' }, prefix: string): string => {
  const fill: Fill = line.fill;
  if (typeof fill === 'object')
    return `class="${lineClass(line.line)}" style="fill:url(#${prefix}${hatchId(fill)})"`;
  return `class="${lineClass(line.line)}${fill === 'none' ? '' : ` f-${fill.replace(' ', '-')}`}"`;
};

const shapeSvg = (shape: Shape, prefix: string): string => {
  switch (shape.kind) {
    case 'area':
      return `<path ${look(shape, prefix)} d="${pathData(shape.contour, true)}"/>`;
    case 'stroke':
      return `<path class="${lineClass(shape.line)}" d="${shape.contours.map((contour) => pathData(contour, false)).join('')}"/>`;
    case 'circle':
      return `<circle ${look(shape, prefix)} cx="${figure(shape.centre[0])}" cy="${figure(shape.centre[1])}" r="${figure(shape.radius)}"/>`;
    case 'text':
      return `<text class="plate" x="${figure(shape.at[0])}" y="${figure(shape.at[1])}" dy=".35em" text-anchor="middle" font-size="${figure(shape.size)}" stroke-width="${figure(shape.size * 0.25)}">${escaped(shape.text)}</text>`;
  }
};

const partSvg = (part: Part, scene: Scene, options: SvgOptions): string => {
  const body = part.shapes.map((shape) => shapeSvg(shape, options.idPrefix ?? '')).join('');
  const slot = scene.slots.find(({ path }) => path === part.slot);
  if (slot === undefined) return `<g>${body}</g>`;
  const state = slot.status === null || slot.status === 'met' ? '' : ` is-${statusKeys[slot.status]}`;
  const selected = options.selected === slot.path ? ' is-selected' : '';
  const attributes = `class="part${state}${selected}" data-slot="${slot.path}"`;
  const title = `<title>${escaped(`${slot.title}: ${slot.name}`)}</title>`;
  return options.href === undefined
    ? `<g ${attributes}>${title}${body}</g>`
    : `<a ${attributes} href="${escaped(options.href(slot.path))}" tabindex="-1" aria-hidden="true">${title}${body}</a>`;
};

const styleSvg = (options: SvgOptions): string =>
  options.standalone === true ? `<style>${lightVariables}\n${drawingStyle}</style>` : '';

/** The drawing as an SVG element: parts, dimensions, callouts with leaders and states. */
export const sceneToSvg = (scene: Scene, options: SvgOptions): string => {
  const frame: SheetFrame = {
    width: options.width,
    height: options.height,
    callouts: options.callouts ?? 'columns',
    numbers: options.numbers,
  };
  const shown = options.dimensions === false ? { ...scene, dimensions: [] } : scene;
  const sheet: Sheet = arrangeSheet(shown, frame);
  const prefix = options.idPrefix ?? '';
  const patterns = hatchesOf(scene).map((hatch) => patternOf(hatch, prefix, 4.4 / sheet.scale));
  const [x, y] = sheet.origin;
  return [
    `<svg class="dr" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${figure(options.width)} ${figure(options.height)}" role="group" aria-label="${escaped(scene.name ?? `Section of ${scene.title}`)}">`,
    styleSvg(options),
    `<defs>${patterns.join('')}</defs>`,
    `<g transform="translate(${figure(x)} ${figure(y)}) scale(${String(Number(sheet.scale.toPrecision(6)))})">`,
    ...shown.parts.map((part) => partSvg(part, scene, options)),
    '</g>',
    dimensionsSvg(shown, sheet),
    labelsSvg(shown, sheet),
    calloutsSvg(sheet, options),
    '</svg>',
  ].join('');
};
