import type { SolverDiagram } from './compile-diagram.js';
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
  for (const { constraint, variables, weights } of known.leftOut.strains) {
    if (network.isSettled(constraint)) continue;
    const scale = importance.get(constraint) ?? 1;
    for (const [i, x] of variables.entries()) {
      const [list, weight] = [strain[x] as Float64Array, weights[i] as Float64Array];
      for (let g = 0; g < list.length; g++) list[g] = (list[g] as number) + scale * (weight[g] as number);
    }
  }
  return strain;
}

/** Takes out of the network's state what is in no combination of the diagram. @returns false where nothing is left */
function dropUncovered({ network, known }: Task): boolean {
  const { domain, variables } = network.layout;
  const { reach, covers } = known;
  for (;;) {
    const { state } = network;
    if (!reach.run(state)) return false;
    let changed = false;
    for (let x = 0; x < variables; x++) {
      if (covers[x] === 0) continue;
      let isNarrower = false;
      for (let w = domain[x] as number; w < (domain[x + 1] as number); w++) {
        if (state[w] === reach.reached[w]) continue;
        state[w] = reach.reached[w] as number;
        isNarrower = true;
      }
      if (!isNarrower) continue;
      network.touch(x);
      changed = true;
    }
    if (!changed) return true;
    if (!network.run()) return false;
    // What the diagram holds it holds exactly: only a constraint left out can take more.
    if (known.leftOut.indexes.length === 0) return true;
  }
}

/**
 * Narrows the network's state by a diagram, and shows groups by combinations that strain the constraints left out as little
 * as possible and meet them all. What is not shown afterwards may still be valid.
 * @returns whether a solution was found; null where there is none at all
 */
export function showByDiagram(task: Task): { found: boolean } | null {
  const { network, known, witnesses } = task;
  const { layout } = network;
  const { sweep } = known;
  const importance = new Map<number, number>();
  let found = false;
  if (!dropUncovered(task)) return null;
  const { state } = network;
  if (known.leftOut.areSettled()) {
    witnesses.addBox(state, layout.size.keys());
    return { found: true };
  }
  for (let round = 0; round < ROUNDS; round++) {
    const strain = strainOf(task, importance);
    sweep.up(state, strain);
    sweep.down(state, strain);
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
        found = true;
      }
    }
    if (failures.size === 0) break;
    const most = Math.max(...failures.values());
    for (const [index, count] of failures)
      importance.set(index, (importance.get(index) ?? 1) * (1 + (4 * count) / most));
  }
  return { found };
}

const fixedGroups = (network: Network): Int32Array =>
  Int32Array.from({ length: network.layout.variables }, (_, x) => firstGroup(network, x));
