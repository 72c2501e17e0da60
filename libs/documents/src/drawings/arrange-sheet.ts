import type { SlotPath } from '@flangewise/model';
import type { Point } from './contour.js';
import { type Anchor, numberSlots, placeAnchors, type Side } from './place-anchors.js';
import type { Scene, SceneSlot } from './scene.js';
import { spreadLabels } from './spread-labels.js';

/** The sheet that a drawing is put on, in the unit of the output (pixels or points). */
export interface SheetFrame {
  readonly width: number;
  readonly height: number;
  /** `columns`: labels with leaders at both sides; `numbers`: balloons with leaders; `none`. */
  readonly callouts: 'columns' | 'numbers' | 'none';
  /** Fixed scale, output units per millimetre of the object; else as large as fits. */
  readonly scale?: number | undefined;
  /** Numbers of the slots where they come from several drawings of one system. */
  readonly numbers?: ReadonlyMap<SlotPath, number> | undefined;
}

/** Label and leader of one slot; points in output units. */
export interface Callout {
  readonly slot: SceneSlot;
  readonly number: number;
  readonly side: Side;
  /** Outer end of the shelf, inner end, edge of the drawing, part. */
  readonly line: readonly [Point, Point, Point, Point];
}

export interface Sheet {
  readonly frame: SheetFrame;
  readonly scale: number;
  /** Where the origin of the scene lies. */
  readonly origin: Point;
  readonly callouts: readonly Callout[];
  readonly numbers: ReadonlyMap<SlotPath, number>;
}

interface Columns {
  /** Width of a label, space for slanting leaders, height a label needs at least. */
  readonly label: number;
  readonly gutter: number;
  readonly pitch: number;
}

const columnsOf = (frame: SheetFrame): Columns => {
  switch (frame.callouts) {
    case 'columns':
      return { label: Math.min(200, frame.width * 0.225), gutter: 46, pitch: 58 };
    case 'numbers':
      return { label: 16, gutter: 12, pitch: 19 };
    case 'none':
      return { label: 0, gutter: 0, pitch: 0 };
  }
};

/** Left and right end of the drawing with its dimensions. */
const reachOf = (scene: Scene): { readonly left: number; readonly right: number } => {
  const lines = scene.dimensions.flatMap(({ kind, at }) => (kind === 'vertical' ? [at] : []));
  return { left: Math.min(scene.bounds.left, ...lines), right: Math.max(scene.bounds.right, ...lines) };
};

const fitted = (scene: Scene, frame: SheetFrame, columns: Columns) => {
  const margin = {
    x: columns.label + columns.gutter,
    dimension: scene.dimensions.length === 0 ? 4 : frame.callouts === 'columns' ? 22 : 10,
  };
  const { top, bottom } = scene.bounds;
  const { left, right } = reachOf(scene);
  const overhang = Math.max(
    0,
    ...scene.dimensions.map(({ kind, at }) => (kind === 'horizontal' ? at - bottom : 0)),
  );
  const [width, height] = [right - left, bottom - top + overhang];
  const room: Point = [
    frame.width - 2 * margin.x - 2 * margin.dimension,
    frame.height - 2 * margin.dimension - (scene.labels.length > 0 ? 18 : 0),
  ];
  const scale = frame.scale ?? Math.max(1e-6, Math.min(room[0] / width, room[1] / height));
  const origin: Point = [
    frame.width / 2 - (scale * (left + right)) / 2,
    margin.dimension + Math.max(0, (room[1] - scale * height) / 2) - scale * top,
  ];
  return { scale, origin };
};

/** Where the drawing, its numbers, labels and leaders go. Leaders never cross: both their ends are in one order. */
export const arrangeSheet = (scene: Scene, frame: SheetFrame): Sheet => {
  const columns = columnsOf(frame);
  const { scale, origin } = fitted(scene, frame, columns);
  const anchors = placeAnchors(scene);
  const numbers = frame.numbers ?? numberSlots(scene, anchors);
  const toSheet = ([x, y]: Point): Point => [origin[0] + scale * x, origin[1] + scale * y];
  const reach = reachOf(scene);
  const bySlot = new Map(scene.slots.map((slot) => [slot.path, slot]));
  const place = (side: Side): Callout[] => {
    const own: readonly Anchor[] = anchors.filter((anchor) => anchor.side === side);
    const ends = own.map(({ point }) => toSheet(point));
    const margin = columns.pitch * 0.62;
    const heights = spreadLabels(
      ends.map(([, y]) => y),
      columns.pitch,
      [margin, frame.height - margin],
    );
    const rim = frame.callouts === 'columns' ? 8 : 1;
    const outer = side === 'left' ? rim : frame.width - rim;
    const inner = side === 'left' ? rim + columns.label : frame.width - rim - columns.label;
    const edge = toSheet([side === 'left' ? reach.left : reach.right, 0])[0] + (side === 'left' ? -6 : 6);
    return own.flatMap(({ path }, i): Callout[] => {
      const [slot, end, y] = [bySlot.get(path), ends[i], heights[i]];
      if (slot === undefined || end === undefined || y === undefined) return [];
      return [
        { slot, number: numbers.get(path) ?? 0, side, line: [[outer, y], [inner, y], [edge, end[1]], end] },
      ];
    });
  };
  const callouts = frame.callouts === 'none' ? [] : [...place('left'), ...place('right')];
  return { frame, scale, origin, callouts, numbers };
};
