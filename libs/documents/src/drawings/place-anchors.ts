import type { SlotPath } from '@flangewise/model';
import type { Point } from './contour.js';
import { type PartMap, partMapOf } from './part-map.js';
import type { Scene } from './scene.js';

export type Side = 'left' | 'right';

/** Where the leader of a slot touches its part, and from which side it comes in level. */
export interface Anchor {
  readonly path: SlotPath;
  readonly side: Side;
  readonly point: Point;
}

interface Candidate {
  readonly row: number;
  readonly column: number;
  /** How much of other parts a level leader passes over, in cells. */
  readonly crossed: number;
  readonly run: number;
}

/** Every slot met on the way in from one side, row by row. */
const candidatesFrom = (map: PartMap, side: Side): ReadonlyMap<number, Candidate[]> => {
  const { columns, rows, cells } = map;
  const found = new Map<number, Candidate[]>();
  for (let row = 0; row < rows; row += 1) {
    const at = (i: number): number => cells[row * columns + (side === 'left' ? i : columns - 1 - i)] ?? 0;
    const met = new Set<number>();
    let crossed = 0;
    let i = 0;
    while (i < columns) {
      const mark = at(i);
      let run = 1;
      while (i + run < columns && at(i + run) === mark) run += 1;
      if (mark > 0 && !met.has(mark)) {
        met.add(mark);
        const inside = i + Math.min(Math.floor(run / 2), 5);
        const candidate = { row, column: side === 'left' ? inside : columns - 1 - inside, crossed, run };
        found.set(mark, [...(found.get(mark) ?? []), candidate]);
      }
      if (mark !== 0) crossed += run;
      i += run;
    }
  }
  return found;
};

const middleRow = (candidates: readonly Candidate[]): number =>
  candidates.reduce((sum, { row }) => sum + row, 0) / Math.max(1, candidates.length);

interface Placed {
  readonly path: SlotPath;
  readonly side: Side;
  readonly candidate: Candidate;
}

/** Slivers are poor targets; so is what lies far behind other parts, or far from the middle of the slot. */
const cost = (candidate: Candidate, middle: number): number =>
  0.6 * candidate.crossed +
  0.25 * Math.abs(candidate.row - middle) +
  (candidate.run < 6 ? 8 * (6 - candidate.run) : 0);

const allowedSides = (scene: Scene, set: number | null): readonly Side[] => {
  const sets = [...new Set(scene.slots.flatMap((slot) => (slot.set === null ? [] : [slot.set])))].toSorted();
  if (sets.length < 2 || set === null) return ['left', 'right'];
  return [set === sets[0] ? 'left' : 'right'];
};

/**
 * One anchor for every slot that can be seen. A leader comes in level from the left or the right edge of the drawing;
 * side and height are chosen so that it passes over as little of other parts as possible, that both sides
 * carry about as many, and that no two leaders of a side run closer than a hundredth of the height. They depend on
 * the scene alone, so numbers are the same at every size.
 */
export const placeAnchors = (scene: Scene): Anchor[] => {
  const map = partMapOf(scene);
  const gap = Math.ceil(map.rows / 90);
  const bySide = { left: candidatesFrom(map, 'left'), right: candidatesFrom(map, 'right') };
  const found = scene.slots.map((slot, i) => {
    const sides = allowedSides(scene, slot.set);
    const all = sides.map((side) => ({ side, candidates: bySide[side].get(i + 1) ?? [] }));
    return { path: slot.path, all, height: all[0]?.candidates.length ?? 0 };
  });
  const placed: Placed[] = [];
  for (const { path, all } of found.toSorted((a, b) => a.height - b.height)) {
    const best = all
      .flatMap(({ side, candidates }) => {
        const middle = middleRow(candidates);
        const crowd = 3 * placed.filter((other) => other.side === side).length;
        return candidates
          .filter(({ row }) =>
            placed.every((other) => other.side !== side || Math.abs(other.candidate.row - row) >= gap),
          )
          .map((candidate) => ({ side, candidate, cost: cost(candidate, middle) + crowd }));
      })
      .toSorted((a, b) => a.cost - b.cost)[0];
    if (best !== undefined) placed.push({ path, side: best.side, candidate: best.candidate });
  }
  return placed
    .map(({ path, side, candidate }): Anchor => ({
      path,
      side,
      point: map.toPoint(candidate.column, candidate.row),
    }))
    .toSorted((a, b) => (a.side === b.side ? a.point[1] - b.point[1] : a.side === 'left' ? -1 : 1));
};

/** Slots in the order of their numbers: left column downwards, right column downwards, then those that are not drawn. */
export const numberSlots = (scene: Scene, anchors: readonly Anchor[]): ReadonlyMap<SlotPath, number> => {
  const shown = anchors.map(({ path }) => path);
  const rest = scene.slots
    .map(({ path }) => path)
    .filter((path) => !shown.includes(path))
    .toSorted((a, b) => Number(a.endsWith('.material')) - Number(b.endsWith('.material')));
  return new Map([...shown, ...rest].map((path, i) => [path, i + 1]));
};
