import type { Ticker } from './meter.js';

/**
 * Sets of items over which a hitting set is sought: it contains an item of each of `sets`,
 * and contains none of `excluded` as a whole.
 */
export interface HittingTask {
  /** Weight of each item, above 0. */
  readonly weights: Float64Array;
  readonly sets: readonly (readonly number[])[];
  readonly excluded: readonly (readonly number[])[];
}

/** Lower bound: the sets not yet hit that have no item in common each cost at least their lightest item. */
function lowerBound(task: HittingTask, chosen: Uint8Array, closed: Uint8Array): number {
  const seen = new Uint8Array(task.weights.length);
  let bound = 0;
  for (const set of task.sets) {
    if (set.some((i) => chosen[i] === 1 || seen[i] === 1)) continue;
    let lightest = Infinity;
    for (const i of set) {
      seen[i] = 1;
      if (closed[i] === 0) lightest = Math.min(lightest, task.weights[i] as number);
    }
    bound += lightest;
  }
  return bound;
}

/** The unhit set with the fewest items still open; null where all are hit. */
function tightest(task: HittingTask, chosen: Uint8Array, closed: Uint8Array): readonly number[] | null {
  let best: readonly number[] | null = null;
  let fewest = Infinity;
  for (const set of task.sets) {
    if (set.some((i) => chosen[i] === 1)) continue;
    const open = set.reduce((n, i) => n + (closed[i] === 0 ? 1 : 0), 0);
    if (open < fewest) {
      fewest = open;
      best = set;
    }
  }
  return best;
}

/** The lightest hitting set, ascending, or null where there is none. */
export function lightestHittingSet(task: HittingTask, meter: Ticker): number[] | null {
  const chosen = new Uint8Array(task.weights.length);
  const closed = new Uint8Array(task.weights.length);
  let best: number[] | null = null;
  let bestWeight = Infinity;
  const branch = (weight: number): void => {
    meter.tick();
    if (task.excluded.some((set) => set.every((i) => chosen[i] === 1))) return;
    if (weight + lowerBound(task, chosen, closed) >= bestWeight) return;
    const set = tightest(task, chosen, closed);
    if (!set) {
      bestWeight = weight;
      best = [...chosen.keys()].filter((i) => chosen[i] === 1);
      return;
    }
    const open = set.filter((i) => closed[i] === 0);
    open.sort((a, b) => (task.weights[a] as number) - (task.weights[b] as number) || a - b);
    for (const i of open) {
      chosen[i] = 1;
      branch(weight + (task.weights[i] as number));
      chosen[i] = 0;
      closed[i] = 1;
    }
    for (const i of open) closed[i] = 0;
  };
  branch(0);
  return best;
}
