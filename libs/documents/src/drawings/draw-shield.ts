import { box, polyline } from './contour.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { cut, seen, seenBox, stroke } from './shape.js';

/** Half width, highest and lowest point of the housing [mm]. */
const extent = (layout: SetLayout) => {
  const { set, detail, coverTop, bottom } = layout;
  const width = Math.max(set.shield?.diameter ?? 0, 2 * (layout.closureRadius + 14 * detail));
  const top = coverTop - 30 * detail;
  const height = Math.max(set.shield?.height ?? 0, bottom - top + 40 * detail);
  return { half: width / 2, top, foot: top + Math.min(height, (bottom - top) * 1.25) };
};

/** Rear wall of the housing with its frame, behind the vessel. */
export const drawShieldBehind = (layout: SetLayout): Shape[] => {
  if (layout.set.shield === null) return [];
  const { half, top, foot } = extent(layout);
  const u = layout.detail;
  return [
    seen(box([-half, top], [half, foot]), 'sheet', 'fine'),
    stroke(
      'thin',
      polyline([-half, top + 9 * u], [half, top + 9 * u]),
      polyline([-half, foot - 9 * u], [half, foot - 9 * u]),
    ),
  ];
};

/** Cut side walls of polycarbonate between a top and a bottom rail; the door with its lock is taken off by the section. */
export const drawShield = (layout: SetLayout): Shape[] => {
  if (layout.set.shield === null) return [];
  const { half, top, foot } = extent(layout);
  const u = layout.detail;
  const wall = 8 * u;
  return [1, -1].flatMap((side) => [
    cut(box([side * (half - wall), top + 9 * u], [side * half, foot - 9 * u]), 'polymer'),
    seenBox([side * (half - wall - 3 * u), top - 3 * u], [side * (half + 3 * u), top + 9 * u]),
    seenBox([side * (half - wall - 3 * u), foot - 9 * u], [side * (half + 3 * u), foot + 3 * u]),
    seenBox([side * half, (top + foot) / 2 - 22 * u], [side * (half + 6 * u), (top + foot) / 2 + 22 * u]),
  ]);
};
