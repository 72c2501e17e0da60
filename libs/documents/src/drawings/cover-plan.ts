import { baffleAnglesDeg, type SlotName, type SlotPath, slotPath } from '@flangewise/model';
import { formatNumber } from '@flangewise/quantities';
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

/** The plate as far as its seal; closure and bolts stand outside of what the plan is for. */
const plateRadius = ({ set, inner, coverRadius }: SetLayout): number =>
  Math.min(coverRadius, Math.max(1.1 * inner, set.seal === null ? 0 : 0.54 * set.seal.diameter));

/** A port with its flange: filled where something sits on it, crossed where a plug closes it; a tilted one leans outwards. */
const portShapes = (port: DrawnPort): Shape[] => {
  const centre = onCircle(port.circle, port.angle);
  const [x, y] = centre;
  const h = port.diameter * 0.35;
  const lean = 2 * port.diameter * Math.sin((port.tilt * Math.PI) / 180);
  return [
    ...(port.tilt === 0 ? [] : [circle(centre, port.diameter * 0.82, { line: 'hidden' })]),
    circle(onCircle(port.circle + 2 * lean, port.angle), port.diameter * 0.82),
    circle(centre, port.diameter / 2, { fill: port.slot === null ? 'part' : 'solid' }),
    ...(port.slot === null
      ? [stroke('fine', polyline([x - h, y - h], [x + h, y + h]), polyline([x - h, y + h], [x + h, y - h]))]
      : []),
  ];
};

/** Parts on a multi-port piece stand around it. */
const aboveParts = (port: DrawnPort): Part[] =>
  port.above.map(({ slot }, i) => {
    const [x, y] = onCircle(port.circle, port.angle);
    const [dx, dy] = onCircle(2.1 * port.diameter, port.angle + (i - (port.above.length - 1) / 2) * 70);
    return { slot, shapes: [circle([x + dx, y + dy], port.diameter * 0.3, { fill: 'solid' })] };
  });

export interface CoverPlanOptions {
  /** `seats`: name, size and who sits there; `names`: the name alone, where a schedule stands beside the plan. */
  readonly labels?: 'seats' | 'names';
}

interface Label {
  readonly port: DrawnPort;
  /** Which ring of labels, from 0: neighbours that are close take turns. */
  readonly ring: number;
}

/** Who sits there, in a word. */
const seatText = (port: DrawnPort, titles: ReadonlyMap<SlotPath, string>): string =>
  [
    port.slot === null ? 'free' : (titles.get(port.slot) ?? port.slot),
    ...port.above.map(({ slot }) => titles.get(slot) ?? slot),
  ].join(', ');

const tiltText = ({ tilt }: DrawnPort): string => (tilt === 0 ? '' : `, ${formatNumber(tilt)}°`);

/** Mean width of a letter in heights of the lettering. */
const letter = 0.55;

/** Texts of a label from the top, with their heights. */
type Lines = (port: DrawnPort) => readonly { readonly text: string; readonly height: number }[];

const labelShapes = (
  { port, ring }: Label,
  { plate, size, linesOf }: { plate: number; size: number; linesOf: Lines },
): Shape[] => {
  const lines = linesOf(port);
  const width = Math.max(...lines.map(({ text, height }) => text.length * height * letter));
  const outer = 2 * plate + ((lines.length === 1 ? 1.9 : 2.6) + 4.6 * ring) * size;
  const [x, y] = onCircle(outer, port.angle);
  // Beside the plate a label begins where its line ends; above and below it stands in the middle.
  const at = x + (Math.sign(x) * Math.abs(x / (outer / 2)) * width) / 2;
  const end = onCircle(outer - (lines.length === 1 ? 1.2 : 1.8) * size, port.angle);
  return [
    stroke('thin', polyline(onCircle(port.circle + 1.64 * port.diameter, port.angle), end)),
    ...lines.map(({ text, height }, i): Shape => ({
      kind: 'text',
      at: [at, y + (i - (lines.length - 1) / 2) * size * 0.98],
      size: height,
      text,
    })),
  ];
};

/** Names, sizes and users around the plate, each with a line to its port; neighbours that are close take turns. */
const seatLabels = (
  layout: SetLayout,
  ports: readonly DrawnPort[],
  titles: ReadonlyMap<SlotPath, string>,
): Shape[] => {
  const plate = plateRadius(layout);
  const size = plate * (ports.length > 12 ? 0.088 : 0.1);
  const sorted = ports.toSorted((a, b) => a.angle - b.angle);
  const closest = Math.min(
    360,
    ...sorted.map((port, i) => apart(port.angle, sorted[(i + 1) % sorted.length]?.angle ?? 0)),
  );
  const isClose = ports.length > 1 && closest < 36;
  const linesOf: Lines = (port) => [
    { text: `${port.name}  Ø ${formatNumber(port.diameter)}${tiltText(port)}`, height: size },
    { text: seatText(port, titles), height: 0.9 * size },
  ];
  return sorted.flatMap((port, i) =>
    labelShapes({ port, ring: isClose ? i % 2 : 0 }, { plate, size, linesOf }),
  );
};

const nameLabels = (layout: SetLayout, ports: readonly DrawnPort[]): Shape[] => {
  const plate = plateRadius(layout);
  const size = plate * (ports.length > 12 ? 0.15 : 0.18);
  const linesOf: Lines = ({ name }) => [{ text: name, height: size }];
  return ports.flatMap((port) => labelShapes({ port, ring: 0 }, { plate, size, linesOf }));
};

/** Between two directions [deg]. */
const apart = (a: number, b: number): number => {
  const turn = Math.abs(a - b) % 360;
  return Math.min(turn, 360 - turn);
};

const dashed = (diameter: number): Shape => circle([0, 0], diameter / 2, { fill: 'none', line: 'hidden' });

/** What stands below the cover and what hangs from it has to stand clear of. */
const belowParts = (layout: SetLayout): Part[] => {
  const { set, inner } = layout;
  const { stirrer, coil, baffles } = set;
  const hasArms = stirrer?.impeller === 'anchor' || stirrer?.impeller === 'double helical ribbon';
  const at = (slot: SlotName, shapes: readonly Shape[]): Part => ({
    slot: slotPath(slot, set.index),
    shapes,
  });
  return [
    at('vessel', [dashed(2 * inner)]),
    ...(stirrer === null
      ? []
      : [
          at('stirrer', [
            dashed(stirrer.diameter),
            ...(hasArms ? [dashed(stirrer.diameter - 2 * stirrer.bladeWidth)] : []),
          ]),
        ]),
    ...(coil === null
      ? []
      : [at('coil', [dashed(coil.diameter - coil.tube), dashed(coil.diameter + coil.tube)])]),
    ...(baffles === null
      ? []
      : [
          at('baffles', [
            stroke(
              'hidden',
              ...baffleAnglesDeg(baffles.count).map((angle) =>
                polyline(onCircle(2 * (inner - baffles.width), angle), onCircle(2 * inner, angle)),
              ),
            ),
          ]),
        ]),
  ];
};

const plateShapes = (layout: SetLayout): Shape[] => [
  circle([0, 0], plateRadius(layout)),
  ...(layout.set.seal === null ? [] : [dashed(layout.set.seal.diameter)]),
  ...(layout.set.coupling === null
    ? []
    : [
        circle([0, 0], Math.min(28 * layout.couplingScale, layout.neckRadius)),
        circle([0, 0], layout.shaftRadius),
      ]),
];

const axes = (layout: SetLayout, ports: readonly DrawnPort[]): Shape[] => {
  const reach = plateRadius(layout) * 1.04;
  const circles = [...new Set(ports.map((port) => port.circle))].filter((diameter) => diameter > 0);
  return [
    ...circles.map((diameter) => circle([0, 0], diameter / 2, { fill: 'none', line: 'centre' })),
    stroke('centre', polyline([-reach, 0], [reach, 0]), polyline([0, -reach], [0, reach])),
  ];
};

/**
 * The cover of one set from above with who sits where, front at the bottom: ports to scale with tilt, the neck that keeps
 * the middle, and dashed what stands below. Undefined while no cover is chosen.
 */
export const coverPlanOf = (
  model: DrawingModel,
  setIndex: number,
  options: CoverPlanOptions = {},
): Scene | undefined => {
  const set = model.sets.find(({ index }) => index === setIndex);
  if (set?.cover == null) return undefined;
  const layout = layoutOf(set);
  const { ports } = set.cover;
  const slots = sceneSlotsOf(model, [set]);
  const titles = new Map(slots.map(({ path, title }) => [path, title]));
  const parts: Part[] = [
    { slot: `sets[${set.index}].cover`, shapes: plateShapes(layout) },
    { slot: null, shapes: axes(layout, ports) },
    ...belowParts(layout),
    {
      slot: null,
      shapes: options.labels === 'names' ? nameLabels(layout, ports) : seatLabels(layout, ports, titles),
    },
    ...ports.map((port): Part => ({ slot: port.slot, shapes: portShapes(port) })),
    ...ports.flatMap(aboveParts),
  ];
  return {
    title: model.title,
    name: `Cover from above, ${model.title}`,
    bounds: boundsOf(parts),
    parts,
    slots,
    dimensions: [],
    labels: [],
    broken: false,
  };
};
