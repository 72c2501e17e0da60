import type { SolverDiagram } from './compile-diagram.js';
import { DiagramSweep } from './diagram-sweep.js';
import type { Network } from './network.js';
import { firstGroup, hasGroup } from './search.js';
import type { Witnesses } from './witnesses.js';

/** Rounds of weighing what the found combinations do not meet. */
const ROUNDS = 3;

interface Task {
  readonly network: Network;
  readonly known: SolverDiagram;
  readonly witnesses: Witnesses;
}

/** Weights that grow with what a group asks of the constraints left out; each constraint by its own importance. */
function strainOf({ network, known }: Task, importance: ReadonlyMap<number, number>): Float64Array[] {
  const strain = Array.from(network.layout.size, (size) => new Float64Array(size));
  for (const { constraint, variables, weights } of known.leftOut.inequalities) {
    if (network.isSettled(constraint)) continue;
    const span = weights.reduce((sum, list) => sum + Math.max(...list) - Math.min(...list), 0);
    const scale = (importance.get(constraint) ?? 1) / (span === 0 ? 1 : span);
    for (const [i, x] of variables.entries()) {
      const [list, weight] = [strain[x] as Float64Array, weights[i] as Float64Array];
      for (let g = 0; g < list.length; g++) list[g] = (list[g] as number) + scale * (weight[g] as number);
    }
  }
  return strain;
}

/** Takes out of the network's state what is in no combination of the diagram. @returns false where nothing is left */
function dropUncovered(
  { network, known }: Task,
  sweep: DiagramSweep,
  weights: readonly Float64Array[],
): boolean {
  const { layout } = network;
  for (;;) {
    const { state } = network;
    if (sweep.up(state, weights) === Infinity) return false;
    sweep.down(state, weights);
    let changed = false;
    for (let x = 0; x < layout.variables; x++) {
      if (known.covers[x] === 0) continue;
      const through = sweep.through[x] as Float64Array;
      for (let g = 0; g < through.length; g++) {
        if (through[g] !== Infinity || !hasGroup(network, x, g)) continue;
        network.drop(x, g);
        changed = true;
      }
    }
    if (!changed) return true;
    if (!network.run()) return false;
  }
}

/**
 * Narrows the network's state by a diagram, and shows groups by combinations that strain the constraints left out as little
 * as possible and meet them all. What is not shown afterwards may still be valid.
 * @returns a solution, if one was found; null where there is none at all
 */
export function showByDiagram(task: Task): { solution: Int32Array | null } | null {
  const { network, known, witnesses } = task;
  const { layout } = network;
  const sweep = new DiagramSweep(known.diagram, layout);
  const importance = new Map<number, number>();
  let solution: Int32Array | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    if (!dropUncovered(task, sweep, strainOf(task, importance))) return null;
    const { state } = network;
    if (known.leftOut.areSettled()) {
      witnesses.shown.set(state.subarray(0, witnesses.shown.length));
      const groups = fixedGroups(network);
      sweep.traceLeast(groups);
      return { solution: groups };
    }
    const failures = new Map<number, number>();
    const groups = fixedGroups(network);
    for (let x = 0; x < layout.variables; x++) {
      if (known.covers[x] === 0) continue;
      for (let g = 0; g < (layout.size[x] as number); g++) {
        if (!hasGroup(network, x, g) || witnesses.has(x, g)) continue;
        sweep.traceThrough(x, g, groups);
        const unmet = known.leftOut.unmet(groups);
        for (const index of unmet) failures.set(index, (failures.get(index) ?? 0) + 1);
        if (unmet.length > 0) continue;
        witnesses.add(groups);
        solution ??= Int32Array.from(groups);
      }
    }
    if (failures.size === 0) break;
    const most = Math.max(...failures.values());
    for (const [index, count] of failures)
      importance.set(index, (importance.get(index) ?? 1) * (1 + (4 * count) / most));
  }
  return { solution };
}

const fixedGroups = (network: Network): Int32Array =>
  Int32Array.from({ length: network.layout.variables }, (_, x) => firstGroup(network, x));
