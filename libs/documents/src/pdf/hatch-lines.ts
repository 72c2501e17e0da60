import { boxAround, type Point } from '../drawings/contour.js';
import { hatchMotifs, hatchTurn } from '../drawings/hatch-motif.js';
import { crossings } from '../drawings/part-map.js';
import type { Hatch } from '../drawings/scene.js';

type Segment = readonly [Point, Point];

const turned = ([x, y]: Point, degrees: number): Point => {
  const angle = (degrees * Math.PI) / 180;
  return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
};

interface Family {
  readonly angle: number;
  readonly pitch: number;
  readonly offset: number;
  /** Drawn length and gap along the line; whole lines without. */
  readonly dash?: readonly [number, number];
}

const dashed = (from: number, to: number, dash: Family['dash']): [number, number][] => {
  if (dash === undefined) return [[from, to]];
  const period = dash[0] + dash[1];
  const first = Math.floor(from / period);
  const last = Math.ceil(to / period);
  return Array.from({ length: Math.max(0, last - first) }, (_, i): [number, number] => [
    Math.max(from, (first + i) * period),
    Math.min(to, (first + i) * period + dash[0]),
  ]).filter(([a, b]) => b > a);
};

/** Parallel lines inside a closed polygon: it is turned until they lie level, then cut row by row. */
const familyLines = (polygon: readonly Point[], family: Family): Segment[] => {
  const level = polygon.map((point) => turned(point, -family.angle));
  const around = boxAround(level);
  if (around === undefined || family.pitch <= 0) return [];
  const first = Math.ceil((around.top - family.offset) / family.pitch);
  const last = Math.floor((around.bottom - family.offset) / family.pitch);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const y = (first + i) * family.pitch + family.offset;
    const cuts = crossings(level, y);
    return cuts.flatMap((from, k): Segment[] => {
      const to = cuts[k + 1];
      if (k % 2 !== 0 || to === undefined) return [];
      return dashed(from, to, family.dash).map(([a, b]): Segment => [
        turned([a, y], family.angle),
        turned([b, y], family.angle),
      ]);
    });
  }).flat();
};

const isInside = ([x, y]: Point, polygon: readonly Point[]): boolean =>
  crossings(polygon, y).filter((cut) => cut < x).length % 2 === 1;

/** Strokes of the tiles that lie wholly inside a closed polygon. */
const tileStrokes = (polygon: readonly Point[], hatch: Hatch, unit: number): Point[][] => {
  const motif = hatchMotifs[hatch.material];
  const around = boxAround(polygon);
  if (around === undefined) return [];
  const [w, h] = [motif.tile[0] * unit, motif.tile[1] * unit];
  const [c0, r0] = [Math.floor(around.left / w), Math.floor(around.top / h)];
  const columns = Math.ceil(around.right / w) - c0;
  const rows = Math.ceil(around.bottom / h) - r0;
  return Array.from({ length: columns * rows }, (_, i) => {
    const [x, y] = [(c0 + (i % columns)) * w, (r0 + Math.floor(i / columns)) * h];
    return motif.strokes
      .map(({ points, curved }) =>
        points
          .filter((_point, k) => curved !== true || k % 2 === 0 || k === 1 || k === 3)
          .map(([px, py]): Point => [x + px * unit, y + py * unit]),
      )
      .filter((stroke) => stroke.every((point) => isInside(point, polygon)));
  }).flat();
};

/** Hatch of a closed polygon as lines, for outputs that know no patterns; `unit` is the spacing. */
export const hatchLines = (polygon: readonly Point[], hatch: Hatch, unit: number): (readonly Point[])[] => {
  const { angle, spacing } = hatchTurn(hatch);
  const u = unit * spacing;
  const family = (pitch: number, offset: number, rest: Partial<Family> = {}): Segment[] =>
    familyLines(polygon, { angle: angle - 90, pitch: pitch * u, offset: offset * u, ...rest });
  switch (hatch.material) {
    case 'steel':
      return family(1, 0);
    case 'aluminium':
      return family(1.55, 0);
    case 'nickel':
      return [...family(1.3, 0), ...family(1.3, 0.36)];
    case 'reactive':
      return [...family(1.9, 0), ...family(1.9, 0.95, { dash: [u, 0.9 * u] })];
    case 'polymer':
      return [...family(0.85, 0), ...family(0.85, 0, { angle })];
    case 'liquid':
      return familyLines(polygon, { angle: 0, pitch: u * 1.5, offset: 0, dash: [1.5 * u, 1.2 * u] });
    case 'glass':
    case 'insulation':
      return tileStrokes(polygon, hatch, u);
  }
};
