import { below, type Contour, flattened, mirrored, polyline, reversed } from './contour.js';
import { wallLine } from './draw-vessel.js';
import type { PlacedPort } from './place-fittings.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { seen, stroke } from './shape.js';

const inside = (layout: SetLayout): Contour => {
  const line = wallLine(layout, { top: 0, side: 0, end: 0 });
  return [...line, ...reversed(mirrored(line))];
};

/** The place of the level marks with most room to shaft, coil, baffles and what hangs from the ports. */
const markPlace = (layout: SetLayout, ports: readonly PlacedPort[]): number => {
  const { inner, shaftRadius, set } = layout;
  const coil = set.coil === null ? [] : [set.coil.diameter / 2, -set.coil.diameter / 2];
  const baffle = set.baffles === null ? [] : [inner - set.baffles.width, set.baffles.width - inner];
  const arms =
    set.stirrer?.impeller === 'anchor' ? [set.stirrer.diameter * 0.46, -set.stirrer.diameter * 0.46] : [];
  const taken = [
    -inner,
    inner,
    -shaftRadius,
    shaftRadius,
    ...coil,
    ...baffle,
    ...arms,
    ...ports.map((port) => port.x),
  ];
  const room = (x: number): number => Math.min(...taken.map((other) => Math.abs(other - x)));
  const places = Array.from({ length: 37 }, (_, i) => (i / 20 - 0.9) * inner);
  return places.toSorted((a, b) => room(b) - room(a))[0] ?? -inner / 2;
};

const levelMark = (layout: SetLayout, x: number, y: number): Shape[] => {
  const u = layout.detail;
  return [
    seen(polyline([x - 4.2 * u, y - 7 * u], [x + 4.2 * u, y - 7 * u], [x, y]), 'part', 'level'),
    stroke(
      'level',
      polyline([x - 3.4 * u, y + 2.4 * u], [x + 3.4 * u, y + 2.4 * u]),
      polyline([x - 1.8 * u, y + 4.6 * u], [x + 1.8 * u, y + 4.6 * u]),
    ),
  ];
};

/** Half the width of the inside at a height. */
const halfWidth = (layout: SetLayout, y: number): number => {
  const points = below(flattened(inside(layout)), y).filter((point) => Math.abs(point[1] - y) < 1e-6);
  return points.reduce((widest, [x]) => Math.max(widest, Math.abs(x)), 0);
};

/** Gas space, liquid up to the cold level, and both levels with the hot one dashed. */
export const drawContents = (layout: SetLayout): Shape[] => {
  const { levels } = layout.set;
  const gas = seen(inside(layout), 'gas', 'none');
  if (levels === null) return [gas];
  const cold = layout.depth - Math.min(layout.depth, Math.max(0, levels.cold));
  const liquid = polyline(...below(flattened(inside(layout)), cold));
  return [
    gas,
    ...(liquid.length < 3
      ? []
      : [seen(liquid, { material: 'liquid', turned: false, close: false } as const, 'none')]),
  ];
};

/** The level lines with their marks; drawn over the internals. */
export const drawLevels = (layout: SetLayout, ports: readonly PlacedPort[]): Shape[] => {
  const { levels } = layout.set;
  if (levels === null) return [];
  const x = markPlace(layout, ports);
  const shown = [
    { height: levels.cold, line: 'level' as const },
    ...(Math.abs(levels.hot - levels.cold) < 0.002 * layout.depth
      ? []
      : [{ height: levels.hot, line: 'hot level' as const }]),
  ];
  return shown.flatMap(({ height, line }) => {
    const y = layout.depth - Math.min(layout.depth, Math.max(0, height));
    const half = halfWidth(layout, y);
    return half === 0 ? [] : [stroke(line, polyline([-half, y], [half, y])), ...levelMark(layout, x, y)];
  });
};
