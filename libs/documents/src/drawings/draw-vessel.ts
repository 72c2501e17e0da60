import { bothSides, box, chain, type Contour, mirrored, polyline, reversed } from './contour.js';
import { endOf } from './end-form.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { cut, seen, stroke } from './shape.js';

/** The ring-shaped section between two lines that both run from the rim on the right to the axis. */
export const shell = (innerLine: Contour, outerLine: Contour): Contour =>
  chain(innerLine, reversed(mirrored(innerLine)), mirrored(outerLine), reversed(outerLine));

/** The line at a distance outside the inner surface of cylinder and end, from a height down to the axis. */
export const wallLine = (layout: SetLayout, at: { top: number; side: number; end: number }): Contour => {
  const end = endOf(layout.set.vessel.endForm, {
    radius: layout.inner,
    top: layout.cylinder,
    wall: layout.set.vessel.endWall,
  });
  return chain(
    polyline([layout.inner + at.side, at.top], [layout.inner + at.side, layout.cylinder]),
    end.line(at.end),
  );
};

const rimLine = (layout: SetLayout): Contour => {
  const { inner, outer, rim, rimFace, rimHeight, set } = layout;
  const chamfer = Math.min(1.2 * layout.detail, rimFace / 8);
  if (set.vessel.construction === 'glass')
    return polyline(
      [inner, 0],
      [rim - chamfer, 0],
      [rim, chamfer],
      [rim, rimFace * 0.55],
      [outer, rimHeight * 1.15],
    );
  const under: Contour =
    rimFace < rimHeight
      ? polyline([rim, rimFace], [outer + chamfer, rimHeight], [outer, rimHeight * 1.12])
      : polyline([rim, rimHeight], [outer, rimHeight]);
  return chain(polyline([inner, 0], [rim - chamfer, 0], [rim, chamfer]), under);
};

/** How thick a lining is drawn: its true thickness is no catalogue value. */
const liningOf = ({ set, detail }: SetLayout): number => Math.min(4 * detail, 0.4 * set.vessel.wall);

const lining = (layout: SetLayout): Shape => {
  const thickness = liningOf(layout);
  const innerLine = wallLine(layout, { top: 0, side: 0, end: 0 });
  const face = layout.rim * 0.93;
  const outerLine = chain(
    polyline([face, 0], [face, thickness * 0.8], [layout.inner + thickness, thickness * 0.8]),
    wallLine(layout, { top: thickness, side: thickness, end: thickness }),
  );
  return cut(shell(innerLine, outerLine), 'polymer');
};

const nozzle = (layout: SetLayout): Shape[] => {
  const bore = layout.set.vessel.bottomPort;
  if (bore === null) return [];
  const { depth, bottom, detail, set } = layout;
  const outerRadius = bore / 2 + Math.max(3 * detail, bore * 0.12);
  const end = bottom + (layout.jacket === null ? 0 : layout.jacket.gap + layout.jacket.wall) + 10 * detail;
  const wall = box([bore / 2, depth - 0.5], [outerRadius, end]);
  return [
    seen(box([-outerRadius, depth], [outerRadius, end]), 'gas', 'none'),
    ...bothSides(wall).map((side) => cut(side, set.vessel.body)),
    ...bothSides(box([bore / 2, end], [outerRadius + 8 * detail, end + 6 * detail])).map((side) =>
      cut(side, set.vessel.body),
    ),
  ];
};

/** The vessel wall with rim, end, lining and bottom nozzle, cut through its axis. */
export const drawVessel = (layout: SetLayout): Shape[] => {
  const { vessel } = layout.set;
  const outerLine = chain(
    rimLine(layout),
    wallLine(layout, { top: layout.rimHeight * 1.15, side: vessel.wall, end: vessel.endWall }).slice(1),
  );
  const wall = cut(shell(wallLine(layout, { top: 0, side: 0, end: 0 }), outerLine), vessel.body);
  return [wall, ...(vessel.construction === 'lined' ? [lining(layout)] : []), ...nozzle(layout)];
};

/** The jacket: fluid, outer wall with its closing ring. */
export const drawJacket = (layout: SetLayout): Shape[] => {
  const { jacket, outer, set } = layout;
  if (jacket === null) return [];
  const { endWall, wall } = set.vessel;
  const [innerSide, outerSide] = [wall + jacket.gap, wall + jacket.gap + jacket.wall];
  const [innerEnd, outerEnd] = [endWall + jacket.gap, endWall + jacket.gap + jacket.wall];
  const slope = jacket.gap * 0.7;
  const innerLine = chain(
    polyline([outer, jacket.top + jacket.wall]),
    wallLine(layout, { top: jacket.top + jacket.wall + slope, side: innerSide, end: innerEnd }),
  );
  const outerLine = chain(
    polyline([outer, jacket.top]),
    wallLine(layout, { top: jacket.top + slope, side: outerSide, end: outerEnd }),
  );
  return [
    seen(chain(innerLine, reversed(mirrored(innerLine))), 'water', 'none'),
    cut(shell(innerLine, outerLine), set.vessel.body, { turned: true }),
  ];
};

/** Connections of the jacket: out at the top left, in at the bottom right. */
export const drawJacketConnections = (layout: SetLayout): Shape[] => {
  const { jacket, detail, outer, cylinder } = layout;
  if (jacket === null) return [];
  const start = outer + jacket.gap + jacket.wall - 0.5;
  const [half, length] = [5 * detail, 16 * detail];
  const stub = (y: number, side: 1 | -1): Shape[] => [
    seen(box([side * start, y - half], [side * (start + length), y + half])),
    seen(
      box([side * (start + length), y - 1.8 * half], [side * (start + length + 5 * detail), y + 1.8 * half]),
    ),
    stroke('centre', polyline([side * (start - 6 * detail), y], [side * (start + length + 12 * detail), y])),
  ];
  const high = jacket.top + jacket.gap * 0.7 + jacket.wall + 14 * detail;
  return [...stub(high, -1), ...stub(Math.max(high, cylinder - 8 * detail), 1)];
};
