import { parseSlotPath, type SlotName } from '@flangewise/model';
import { figure, pathData } from './contour.js';
import type { Part, Scene, Shape } from './scene.js';
import { boundsOf } from './scene-bounds.js';
import { escaped } from './svg-text.js';

export interface ThumbnailOptions {
  readonly width: number;
  readonly height: number;
  /** Pixels per millimetre, to show several systems at one scale; as large as fits when absent. */
  readonly scale?: number;
}

/** What tells one family from another at the size of a stamp. */
const shownSlots = new Set<SlotName>([
  'vessel',
  'cover',
  'closure',
  'shaft',
  'stirrer',
  'coil',
  'baffles',
  'heater',
  'coupling',
  'shield',
  'bottomValve',
]);

const isShown = ({ slot, shapes }: Part): boolean => {
  if (slot === null)
    return shapes.some((shape) => shape.kind === 'area' && shape.line === 'none' && shape.fill !== 'solid');
  const parsed = parseSlotPath(slot);
  return parsed !== undefined && shownSlots.has(parsed.slot);
};

const tone = (shape: Shape & { kind: 'area' | 'circle' }): string => {
  const { fill } = shape;
  if (typeof fill !== 'object') {
    const soft = { gas: 'w-gas', water: 'w-water', sheet: 'sheet', part: 'part', heat: 'w-heat' } as const;
    return fill in soft
      ? `var(--${soft[fill as keyof typeof soft]})`
      : fill === 'none'
        ? 'none'
        : 'var(--ink)';
  }
  if (fill.material === 'liquid') return 'var(--w-liq)';
  return fill.material === 'glass' || fill.material === 'insulation' ? 'var(--part)' : 'var(--ink)';
};

const shapeSvg = (shape: Shape): string => {
  if (shape.kind === 'stroke' || shape.kind === 'text') return '';
  const line =
    shape.line === 'none' ? '' : ' stroke="var(--ink)" stroke-width=".9" vector-effect="non-scaling-stroke"';
  const look = `fill="${tone(shape)}"${line}`;
  return shape.kind === 'area'
    ? `<path ${look} d="${pathData(shape.contour, true)}"/>`
    : `<circle ${look} cx="${figure(shape.centre[0])}" cy="${figure(shape.centre[1])}" r="${figure(shape.radius)}"/>`;
};

/** A small section for lists: cut bodies solid, neither frame nor fittings, colours from the page. */
export const thumbnailSvg = (scene: Scene, options: ThumbnailOptions): string => {
  const parts = scene.parts.filter(isShown);
  const { left, top, right, bottom } = boundsOf(parts);
  const [width, height] = [Math.max(1, right - left), Math.max(1, bottom - top)];
  const scale = options.scale ?? Math.min((options.width - 4) / width, (options.height - 4) / height);
  const [x, y] = [
    options.width / 2 - (scale * (left + right)) / 2,
    options.height / 2 - (scale * (top + bottom)) / 2,
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${figure(options.width)}" height="${figure(options.height)}" viewBox="0 0 ${figure(options.width)} ${figure(options.height)}" role="img" aria-label="${escaped(`Section of ${scene.title}`)}">`,
    `<g transform="translate(${figure(x)} ${figure(y)}) scale(${String(Number(scale.toPrecision(6)))})">`,
    ...parts.flatMap(({ shapes }) => shapes.map(shapeSvg)),
    '</g></svg>',
  ].join('');
};
