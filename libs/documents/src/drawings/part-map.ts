import type { SlotPath } from '@flangewise/model';
import { boxAround, flattened, type Point } from './contour.js';
import type { Scene, Shape } from './scene.js';

/** Which slot is visible where: a raster of the drawing, painted in the order of the scene. */
export interface PartMap {
  readonly columns: number;
  readonly rows: number;
  /** Slot number + 1 per cell; 0 empty, −1 drawn but of no slot. */
  readonly cells: Int16Array;
  readonly slots: readonly SlotPath[];
  readonly toPoint: (column: number, row: number) => Point;
}

const columns = 420;
const rows = 300;

const outline = (shape: Shape): Point[] => {
  if (shape.kind === 'area') return shape.fill === 'none' ? [] : flattened(shape.contour);
  if (shape.kind !== 'circle' || shape.fill === 'none') return [];
  const { centre, radius } = shape;
  return Array.from({ length: 16 }, (_, i) => {
    const angle = (i / 16) * 2 * Math.PI;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)] as const;
  });
};

/** Where a horizontal line crosses a closed polygon, from left to right. */
export const crossings = (polygon: readonly Point[], y: number): number[] =>
  polygon
    .flatMap(([x, py], i): number[] => {
      const [bx, by] = polygon.at(i - 1) ?? [x, py];
      return by <= y === py <= y ? [] : [bx + ((y - by) / (py - by)) * (x - bx)];
    })
    .toSorted((a, b) => a - b);

export const partMapOf = (scene: Scene): PartMap => {
  const { left, top, right, bottom } = scene.bounds;
  const [stepX, stepY] = [(right - left) / columns, (bottom - top) / rows];
  const slots = scene.slots.map(({ path }) => path);
  const cells = new Int16Array(columns * rows);
  const toPoint = (column: number, row: number): Point => [
    left + (column + 0.5) * stepX,
    top + (row + 0.5) * stepY,
  ];
  for (const part of scene.parts) {
    const mark = part.slot === null ? -1 : slots.indexOf(part.slot) + 1 || -1;
    for (const polygon of part.shapes.map(outline)) {
      const around = boxAround(polygon);
      if (around === undefined) continue;
      const first = Math.max(0, Math.floor((around.top - top) / stepY));
      const last = Math.min(rows - 1, Math.ceil((around.bottom - top) / stepY));
      for (let row = first; row <= last; row += 1) {
        const thin = Math.min(stepY / 2, (around.bottom - around.top) / 4);
        const middle = top + (row + 0.5) * stepY;
        const y = Math.min(Math.max(middle, around.top + thin), around.bottom - thin);
        if (Math.abs(y - middle) > stepY / 2) continue;
        const cuts = crossings(polygon, y);
        for (let i = 0; i + 1 < cuts.length; i += 2) {
          const from = Math.max(0, Math.ceil(((cuts[i] ?? 0) - left) / stepX - 0.5));
          const to = Math.min(columns - 1, Math.floor(((cuts[i + 1] ?? 0) - left) / stepX - 0.5));
          cells.fill(mark, row * columns + from, row * columns + Math.max(from, to + 1));
        }
      }
    }
  }
  return { columns, rows, cells, slots, toPoint };
};
