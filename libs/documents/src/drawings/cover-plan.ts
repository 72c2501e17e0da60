import { polyline, type Point } from './contour.js';
import type { DrawingModel, DrawnPort } from './drawing-model.js';
import type { Part, Scene, Shape } from './scene.js';
import { boundsOf } from './scene-bounds.js';
import { sceneSlotsOf } from './scene-slots.js';
import { layoutOf, type SetLayout } from './set-layout.js';
import { circle, stroke } from './shape.js';

/** Place on a circle around the axis; front at the bottom of the sheet, angles clockwise as seen from above. */
const onCircle = (diameter: number, angleDeg: number): Point => {
  const angle = (angleDeg * Math.PI) / 180;
  return [(-diameter / 2) * Math.sin(angle), (diameter / 2) * Math.cos(angle)];
};

const boltShapes = (layout: SetLayout): Shape[] => {
  const { bolt, set } = layout;
  if (set.closure?.kind !== 'bolted') return [];
  return Array.from({ length: bolt.count }, (_, i) =>
    onCircle(2 * bolt.circle, (360 * (i + 0.5)) / bolt.count),
  ).flatMap((centre) => [
    circle(centre, 0.85 * bolt.diameter, { line: 'fine' }),
    circle(centre, 0.5 * bolt.diameter, { line: 'thin' }),
  ]);
};

/** Gaps of a clamp in two parts, or of three segments. */
const gaps = (layout: SetLayout): Shape[] => {
  const kind = layout.set.closure?.kind;
  const angles = kind === 'segment' ? [60, 180, 300] : kind === 'clamp' ? [90, 270] : [];
  const [from, to] = [layout.outer + 4 * layout.detail, layout.closureRadius];
  return angles.map((angle) => stroke('fine', polyline(onCircle(2 * from, angle), onCircle(2 * to, angle))));
};

const portShapes = (port: DrawnPort): Shape[] => {
  const centre = onCircle(port.circle, port.angle);
  return [
    circle(centre, port.diameter * 0.82),
    circle(centre, port.diameter / 2, { fill: port.slot === null ? 'part' : 'solid' }),
  ];
};

/** Size of the port names: as large as the room between neighbours on a circle allows. */
const labelSize = (layout: SetLayout, ports: readonly DrawnPort[]): number => {
  const rooms = ports
    .filter((port) => port.circle > 0)
    .map((port) => {
      const neighbours = ports.filter((other) => Math.abs(other.circle - port.circle) < 1).length;
      return (Math.PI * (port.circle + 3 * port.diameter)) / neighbours / 2.1;
    });
  return Math.min(layout.closureRadius * 0.15, ...rooms);
};

const portLabel = (port: DrawnPort, size: number): Shape => {
  const radius = port.circle / 2 + port.diameter * 0.82 + size * 0.85;
  return { kind: 'text', at: onCircle(2 * radius, port.angle), size, text: port.name };
};

const plateShapes = (layout: SetLayout): Shape[] => {
  const { closureRadius, coverRadius, outer, set, detail: u } = layout;
  const gripped = set.closure !== null && set.closure.kind !== 'bolted';
  const boss = Math.min(outer * 0.955, coverRadius);
  return [
    ...(gripped ? [circle([0, 0], closureRadius)] : []),
    ...gaps(layout),
    circle([0, 0], gripped ? boss : coverRadius),
    ...(set.seal === null ? [] : [circle([0, 0], set.seal.diameter / 2, { fill: 'none', line: 'hidden' })]),
    ...(set.coupling === null
      ? []
      : [
          circle([0, 0], Math.min(28 * layout.couplingScale, layout.neckRadius)),
          circle([0, 0], layout.shaftRadius),
        ]),
    ...(set.closure?.kind === 'segment' ? [circle([closureRadius - 22 * u, 0], 8 * u)] : []),
  ];
};

const axes = (layout: SetLayout, ports: readonly DrawnPort[]): Shape[] => {
  const reach = layout.closureRadius * 1.12;
  const circles = [...new Set(ports.map((port) => port.circle))].filter((diameter) => diameter > 0);
  return [
    ...circles.map((diameter) => circle([0, 0], diameter / 2, { fill: 'none', line: 'centre' })),
    stroke('centre', polyline([-reach, 0], [reach, 0]), polyline([0, -reach], [0, reach])),
  ];
};

/** The cover of one set from above with its ports, front at the bottom; undefined while no cover is chosen. */
export const coverPlanOf = (model: DrawingModel, setIndex: number): Scene | undefined => {
  const set = model.sets.find(({ index }) => index === setIndex);
  if (set?.cover == null) return undefined;
  const layout = layoutOf(set);
  const { ports } = set.cover;
  const size = labelSize(layout, ports);
  const parts: Part[] = [
    { slot: `sets[${set.index}].cover`, shapes: [...plateShapes(layout), ...boltShapes(layout)] },
    { slot: null, shapes: axes(layout, ports) },
    { slot: null, shapes: ports.map((port) => portLabel(port, size)) },
    ...ports.map((port): Part => ({ slot: port.slot, shapes: portShapes(port) })),
  ];
  return {
    title: `cover from above, ${model.title}`,
    bounds: boundsOf(parts),
    parts,
    slots: sceneSlotsOf(model, [set]),
    dimensions: [],
    labels: [],
    broken: false,
  };
};
