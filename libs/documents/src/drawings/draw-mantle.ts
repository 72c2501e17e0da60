import { bothSides, box, mirrored, polyline } from './contour.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { cut, seen, stroke } from './shape.js';

/** Electric heating mantle: block with heating rods, insulation, sheet-metal shell. */
export const drawMantle = (layout: SetLayout): Shape[] => {
  const { mantle, detail: u } = layout;
  if (mantle === null) return [];
  const { inner, block, outer, top, bottom } = mantle;
  const sheet = outer - 3 * u;
  const floor = bottom - 5 * u;
  const blockEnd = Math.max(top + 20 * u, floor - 18 * u);
  const aluminium = box([inner, top + 5 * u], [block, blockEnd]);
  const insulation = polyline(
    [block, top + 5 * u],
    [sheet, top + 5 * u],
    [sheet, floor],
    [inner * 0.9, floor],
    [inner * 0.9, blockEnd + 10 * u],
    [block, blockEnd + 10 * u],
  );
  const lid = box([inner, top], [sheet, top + 5 * u]);
  const shell = polyline(
    [sheet, top],
    [outer, top],
    [outer, bottom],
    [0, bottom],
    [0, floor],
    [sheet, floor],
  );
  const rods = Math.max(2, Math.min(9, Math.round((blockEnd - top) / (32 * u))));
  const pitch = (blockEnd - top - 5 * u) / rods;
  const rodAt = (i: number): Shape[] => {
    const y = top + 5 * u + pitch * (i + 0.5);
    const [x1, x2, half] = [inner + 5 * u, inner + 12 * u, Math.min(8 * u, pitch * 0.32)];
    const cross = [polyline([x1, y - half], [x2, y + half]), polyline([x2, y - half], [x1, y + half])];
    return [
      ...bothSides(box([x1, y - half], [x2, y + half])).map((rod) => seen(rod, 'heat')),
      stroke('thin', ...cross, ...cross.map(mirrored)),
    ];
  };
  return [
    cut(aluminium, 'aluminium'),
    cut(mirrored(aluminium), 'aluminium', { turned: true }),
    ...bothSides(insulation).map((side) => cut(side, 'insulation')),
    ...bothSides(shell).map((side, i) => cut(side, 'steel', { turned: i === 0, close: true })),
    ...bothSides(lid).map((side, i) => cut(side, 'steel', { turned: i === 0, close: true })),
    ...Array.from({ length: rods }, (_, i) => rodAt(i)).flat(),
  ];
};
