import type { PartialSolution } from './branch-and-bound.js';
import { BranchAndBound } from './branch-and-bound.js';
import { openComponents } from './components.js';
import { DiagramSearch } from './diagram-search.js';
import type { Diagrams } from './diagrams.js';
import { dropDominated } from './dominance.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import { Search } from './search.js';

export interface CheapestTask {
  readonly network: Network;
  /** Propagated. */
  readonly state: Uint32Array;
  /** Cost of each group of each variable; every group in the state has a finite cost. */
  readonly cost: readonly Float64Array[];
  /** Only solutions that cost less are wanted. */
  readonly below?: number;
  /** Where to look for a diagram. */
  readonly diagrams: Diagrams | null;
  /** Told of every better solution on the way. */
  readonly watch?: (groups: Int32Array) => void;
}

export interface Cheapest {
  readonly groups: Int32Array;
  readonly cost: number;
}

/** Cheapest group of each variable in the network's state. */
function cheapestGroups({ network, state, cost }: CheapestTask): Int32Array {
  const { domain } = network.layout;
  return Int32Array.from(cost, (costs, x) => {
    let best = -1;
    for (let g = 0; g < costs.length; g++) {
      const word = state[(domain[x] as number) + (g >>> 5)] as number;
      if (((word >>> (g & 31)) & 1) === 0) continue;
      if (best < 0 || (costs[g] as number) < (costs[best] as number)) best = g;
    }
    return best;
  });
}

/** The cheapest solution under a propagated state, with proof; null where none costs less than `below`. */
export function cheapest(asked: CheapestTask, meter: Ticker): Cheapest | null {
  const diagram = asked.diagrams?.within(asked.state, meter);
  if (diagram) return new DiagramSearch(asked, diagram, meter).run();
  const task = { ...asked, state: Uint32Array.from(asked.state) };
  const { network, state, cost, below = Infinity } = task;
  network.state = state;
  dropDominated(network, cost);
  // A fresh order of search, so that the same question has the same answer whatever was asked before.
  network.failures.fill(1);
  const least = cheapestGroups(task);
  const groups = new Search(network, meter).solve(state, { hint: least });
  if (!groups) return null;
  const costOf = (x: number, g: Int32Array): number => cost[x]?.[g[x] as number] as number;
  const sum = (variables: Iterable<number>, g: Int32Array): number => {
    let total = 0;
    for (const x of variables) total += costOf(x, g);
    return total;
  };
  network.state = state;
  const components = openComponents(network);
  const joined = new Set(components.flatMap((c) => [...c]));
  for (let x = 0; x < groups.length; x++) if (!joined.has(x)) groups[x] = least[x] as number;
  const started = sum(groups.keys(), groups);
  if (started < below) task.watch?.(groups);
  const solver = new BranchAndBound(task, meter);
  // The least costs, replaced by proved ones as components are done.
  let bound = sum(least.keys(), least);
  for (const variables of components) {
    const own = sum(variables, least);
    const incumbent = sum(variables, groups);
    const room = below - (bound - own);
    const take = (found: PartialSolution): void => {
      if (found.cost >= sum(variables, groups)) return;
      for (const [i, x] of found.variables.entries()) groups[x] = found.groups[i] as number;
      if (sum(groups.keys(), groups) < below) task.watch?.(groups);
    };
    const part = { state: Uint32Array.from(state), variables, below: Math.min(incumbent, room) };
    const improved = solver.solve(part, take);
    if (improved) take(improved);
    else if (incumbent >= room) return null;
    bound += sum(variables, groups) - own;
  }
  const total = sum(groups.keys(), groups);
  return total < below ? { groups, cost: total } : null;
}
