import { lowestBit } from './bits.js';
import { openComponents } from './components.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import { firstGroup, Search } from './search.js';

export interface CheapestTask {
  readonly network: Network;
  /** Propagated. */
  readonly state: Uint32Array;
  /** Cost of each group of each variable; every group in the state has a finite cost. */
  readonly cost: readonly Float64Array[];
  /** Only solutions that cost less are wanted. */
  readonly below?: number;
  /** Told of every better solution on the way. */
  readonly watch?: (groups: Int32Array) => void;
}

export interface Cheapest {
  readonly groups: Int32Array;
  readonly cost: number;
}

/** Branch and bound within one component: the least costs of the domains bound the rest. */
class BranchAndBound {
  private readonly pool: Uint32Array[] = [];
  private best: Uint32Array | null = null;
  private bestCost: number;

  constructor(
    private readonly task: CheapestTask,
    private readonly variables: Int32Array,
    private readonly meter: Ticker,
  ) {
    this.bestCost = task.below ?? Infinity;
  }

  run(below: number): { state: Uint32Array; cost: number } | null {
    this.bestCost = below;
    this.branch(this.task.state, 0);
    return this.best ? { state: this.best, cost: this.bestCost } : null;
  }

  private branch(state: Uint32Array, depth: number): void {
    const { network } = this.task;
    this.meter.tick();
    network.state = state;
    if (!this.cutExpensive()) return;
    const variable = this.pick();
    if (variable < 0) {
      this.best = Uint32Array.from(state);
      this.bestCost = this.bound();
      return;
    }
    const open = this.level(2 * depth);
    const trial = this.level(2 * depth + 1);
    open.set(state);
    for (;;) {
      network.state = open;
      const group = this.least(variable).group;
      if (group < 0) return;
      trial.set(open);
      network.state = trial;
      network.fix(variable, group);
      if (network.run()) this.branch(trial, depth + 1);
      network.state = open;
      network.drop(variable, group);
      if (!network.run() || !this.cutExpensive()) return;
    }
  }

  private bound(): number {
    let sum = 0;
    for (const x of this.variables) sum += this.least(x).cost;
    return sum;
  }

  /** Drops groups that cannot be part of a cheaper solution. @returns false where none can */
  private cutExpensive(): boolean {
    const { network } = this.task;
    for (;;) {
      const bound = this.bound();
      if (bound >= this.bestCost) return false;
      if (this.bestCost === Infinity) return true;
      let changed = false;
      for (const x of this.variables) {
        const most = this.bestCost - bound + this.least(x).cost;
        if (this.dropAtLeast(x, most)) changed = true;
      }
      if (!changed) return true;
      if (!network.run()) return false;
    }
  }

  private dropAtLeast(x: number, most: number): boolean {
    const { network, cost } = this.task;
    const { layout, state } = network;
    const costs = cost[x] as Float64Array;
    const start = layout.domain[x] as number;
    let changed = false;
    for (let w = start; w < (layout.domain[x + 1] as number); w++)
      for (let word = state[w] as number; word !== 0; word &= word - 1) {
        const g = ((w - start) << 5) + lowestBit(word);
        if ((costs[g] as number) < most) continue;
        network.drop(x, g);
        changed = true;
      }
    return changed;
  }

  private least(x: number): { group: number; cost: number } {
    const { network, cost } = this.task;
    const { layout, state } = network;
    const costs = cost[x] as Float64Array;
    const start = layout.domain[x] as number;
    let group = -1;
    let best = Infinity;
    for (let w = start; w < (layout.domain[x + 1] as number); w++)
      for (let word = state[w] as number; word !== 0; word &= word - 1) {
        const g = ((w - start) << 5) + lowestBit(word);
        if ((costs[g] as number) >= best) continue;
        best = costs[g] as number;
        group = g;
      }
    return { group, cost: best };
  }

  /** The variable whose second least cost is furthest above the least, weighted by failures and domain size. */
  private pick(): number {
    const { network, cost } = this.task;
    const { layout, state } = network;
    let best = -1;
    let bestScore = -1;
    for (const x of this.variables) {
      const costs = cost[x] as Float64Array;
      const start = layout.domain[x] as number;
      let least = Infinity;
      let second = Infinity;
      let count = 0;
      for (let w = start; w < (layout.domain[x + 1] as number); w++)
        for (let word = state[w] as number; word !== 0; word &= word - 1) {
          const c = costs[((w - start) << 5) + lowestBit(word)] as number;
          count++;
          if (c < least) {
            second = least;
            least = c;
          } else if (c < second) second = c;
        }
      if (count < 2) continue;
      const score = ((second - least + 0.1) * (network.failures[x] as number)) / count;
      if (score > bestScore) {
        bestScore = score;
        best = x;
      }
    }
    return best;
  }

  private level(index: number): Uint32Array {
    return (this.pool[index] ??= new Uint32Array(this.task.network.layout.words));
  }
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
export function cheapest(task: CheapestTask, meter: Ticker): Cheapest | null {
  const { network, state, cost, below = Infinity } = task;
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
  task.watch?.(groups);
  // The least costs, replaced by proved ones as components are done.
  let bound = sum(least.keys(), least);
  for (const variables of components) {
    const own = sum(variables, least);
    const incumbent = sum(variables, groups);
    const room = below - (bound - own);
    const improved = new BranchAndBound(task, variables, meter).run(Math.min(incumbent, room));
    if (!improved && incumbent >= room) return null;
    bound += (improved ? improved.cost : incumbent) - own;
    if (!improved) continue;
    network.state = improved.state;
    for (const x of variables) groups[x] = firstGroup(network, x);
    task.watch?.(groups);
  }
  const total = sum(groups.keys(), groups);
  return total < below ? { groups, cost: total } : null;
}
