import type { Cheapest, CheapestTask } from './cheapest.js';
import type { SolverDiagram } from './compile-diagram.js';
import { domainSize } from './components.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import { PricedDiagram } from './priced-diagram.js';

/** Rounds of pricing at the root and at other nodes. */
const ROOT_ROUNDS = 40;
const NODE_ROUNDS = 4;
/** More than pricing can lose to rounding; costs are integers. */
const ROUNDING = 1e-3;

/**
 * The cheapest solution by branch and bound over a diagram. The cheapest combination of the diagram, its left-out
 * inequalities priced, bounds the cost; where it meets what is left out at the same cost, it is the cheapest solution of
 * the state; where not, the search branches on a variable of what it does not meet.
 */
export class DiagramSearch {
  private readonly pool: Uint32Array[] = [];
  private readonly network: Network;
  private readonly priced: PricedDiagram;
  private readonly groups: Int32Array;
  private best: Int32Array | null = null;
  private below: number;

  constructor(
    private readonly task: CheapestTask,
    private readonly known: SolverDiagram,
    private readonly meter: Ticker,
  ) {
    this.network = task.network;
    this.priced = new PricedDiagram(task.network, known, task.cost);
    this.groups = new Int32Array(task.network.layout.variables);
    this.below = task.below ?? Infinity;
  }

  run(): Cheapest | null {
    this.network.failures.fill(1);
    this.node(Uint32Array.from(this.task.state), 0);
    return this.best && { groups: this.best, cost: this.below };
  }

  private node(state: Uint32Array, depth: number): void {
    const { network, priced } = this;
    this.meter.tick();
    network.state = state;
    const before = Float64Array.from(priced.prices);
    const open = this.tighten(depth === 0 ? ROOT_ROUNDS : NODE_ROUNDS);
    if (open) this.branch(state, { ...open, depth });
    priced.prices.set(before);
  }

  /**
   * Raises the bound and drops what is in no cheaper solution.
   * @returns what is left open, or null where the state is done
   */
  private tighten(rounds: number): { unmet: number[]; bounds: (x: number) => Float64Array | null } | null {
    const { network, priced, groups } = this;
    let bestBound = -Infinity;
    let bestPrices = Float64Array.from(priced.prices);
    for (let round = 0; ;) {
      const bound = priced.bound(groups);
      if (this.isTooMuch(bound)) return null;
      const missed = this.known.leftOut.unmet(groups);
      if (missed.length === 0 && this.take() <= bound + ROUNDING) return null;
      if (bound > bestBound) {
        bestBound = bound;
        bestPrices = Float64Array.from(priced.prices);
      }
      const target = this.below === Infinity ? bestBound + 0.05 * Math.abs(bestBound) + 1 : this.below;
      if (++round <= rounds && priced.reprice(bound, target)) continue;
      priced.prices.set(bestPrices);
      if (this.isTooMuch(priced.bound(groups))) return null;
      const bounds = priced.bounds();
      const dropped = this.drop(bounds);
      if (!dropped) return { unmet: this.known.leftOut.unmet(groups), bounds };
      if (!network.run()) return null;
      round = rounds;
      bestBound = -Infinity;
    }
  }

  private isTooMuch(bound: number): boolean {
    return bound === Infinity || bound > this.below - 1 + ROUNDING;
  }

  /** Takes the present groups as a solution if they are cheaper. @returns their cost */
  private take(): number {
    const { groups, task } = this;
    const cost = groups.reduce((sum, g, x) => sum + (task.cost[x]?.[g] as number), 0);
    if (cost < this.below) {
      this.best = Int32Array.from(groups);
      this.below = cost;
      task.watch?.(this.best);
    }
    return cost;
  }

  private branch(
    state: Uint32Array,
    from: { unmet: number[]; bounds: (x: number) => Float64Array | null; depth: number },
  ): void {
    const { network } = this;
    const x = this.pick(from.unmet);
    const bounds = x < 0 ? null : from.bounds(x);
    // Where all is fixed, the one combination has been looked at.
    if (!bounds) return;
    const open = this.level(2 * from.depth);
    const trial = this.level(2 * from.depth + 1);
    open.set(state);
    const order = [...bounds.keys()].sort((a, b) => (bounds[a] as number) - (bounds[b] as number));
    for (const group of order) {
      if (this.isTooMuch(bounds[group] as number)) return;
      const word = open[(network.layout.domain[x] as number) + (group >>> 5)] as number;
      if (((word >>> (group & 31)) & 1) === 0) continue;
      trial.set(open);
      network.state = trial;
      network.fix(x, group);
      if (network.run()) this.node(trial, from.depth + 1);
      network.state = open;
      network.drop(x, group);
      if (!network.run()) return;
    }
  }

  /** Drops the groups that are in no cheaper solution. @returns whether there were any */
  private drop(bounds: (x: number) => Float64Array | null): boolean {
    const { network } = this;
    const { layout, state } = network;
    let changed = false;
    for (let x = 0; x < layout.variables; x++) {
      const list = bounds(x);
      if (!list) continue;
      for (let g = 0; g < list.length; g++) {
        const at = (layout.domain[x] as number) + (g >>> 5);
        if ((((state[at] as number) >>> (g & 31)) & 1) === 0 || !this.isTooMuch(list[g] as number)) continue;
        network.drop(x, g);
        changed = true;
      }
    }
    return changed;
  }

  /** The open variable with the most failures for its size, of unmet constraints if there are any. */
  private pick(unmet: readonly number[]): number {
    const { network } = this;
    let best = -1;
    let bestScore = -1;
    const consider = (x: number): void => {
      const size = domainSize(network, x);
      if (size < 2) return;
      const score = (network.failures[x] as number) / size;
      if (score > bestScore) {
        bestScore = score;
        best = x;
      }
    };
    for (const index of unmet)
      for (const id of network.constraints[index]?.views ?? []) consider(network.view(id).variable);
    if (best < 0) for (let x = 0; x < network.layout.variables; x++) consider(x);
    return best;
  }

  private level(index: number): Uint32Array {
    return (this.pool[index] ??= new Uint32Array(this.network.layout.words));
  }
}
