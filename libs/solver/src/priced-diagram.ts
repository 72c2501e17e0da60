import type { SolverDiagram } from './compile-diagram.js';
import type { DiagramSweep } from './diagram-sweep.js';
import type { GroupInequality } from './left-out.js';
import type { Network } from './network.js';
import { firstGroup } from './search.js';

/**
 * A diagram whose left-out inequalities are priced: each adds its excess times a price to the costs (Lagrange). Whatever the
 * prices, the least priced total bounds the cost of every solution from below.
 */
export class PricedDiagram {
  readonly prices: Float64Array;
  private readonly sweep: DiagramSweep;
  private readonly inequalities: readonly GroupInequality[];
  /** Costs with the priced weights. */
  private readonly priced: readonly Float64Array[];
  /** What variables outside the diagram and the limits add to the total. */
  private constant = 0;
  /** By how much the least combination exceeds each inequality. */
  readonly excess: Float64Array;

  constructor(
    private readonly network: Network,
    private readonly known: SolverDiagram,
    private readonly cost: readonly Float64Array[],
  ) {
    this.sweep = known.sweep;
    this.inequalities = known.leftOut.inequalities;
    this.prices = new Float64Array(this.inequalities.length);
    this.excess = new Float64Array(this.inequalities.length);
    this.priced = cost.map((c) => Float64Array.from(c));
  }

  /**
   * Bounds the cost of the solutions within the network's state, and writes the groups of a least combination.
   * @returns Infinity where there is none
   */
  bound(groups: Int32Array): number {
    const { network, known, priced, prices } = this;
    for (const [x, list] of priced.entries()) list.set(this.cost[x] as Float64Array);
    this.constant = 0;
    for (const [k, { variables, weights, most }] of this.inequalities.entries()) {
      const price = prices[k] as number;
      if (price === 0) continue;
      this.constant -= price * most;
      for (const [i, x] of variables.entries()) {
        const [list, weight] = [priced[x] as Float64Array, weights[i] as Float64Array];
        for (let g = 0; g < list.length; g++) list[g] = (list[g] as number) + price * (weight[g] as number);
      }
    }
    for (let x = 0; x < groups.length; x++) {
      if (known.covers[x] === 1) continue;
      groups[x] = firstGroup(network, x);
      this.constant += priced[x]?.[groups[x] as number] as number;
    }
    const total = this.sweep.up(network.state, priced);
    if (total === Infinity) return Infinity;
    this.sweep.traceLeast(groups);
    for (const [k, { variables, weights, most }] of this.inequalities.entries()) {
      let sum = -most;
      for (const [i, x] of variables.entries()) sum += weights[i]?.[groups[x] as number] as number;
      this.excess[k] = sum;
    }
    return total + this.constant;
  }

  /**
   * After `bound`: bounds for each group of a variable, the cost of the solutions with it.
   * @returns null for variables that are fixed
   */
  bounds(): (x: number) => Float64Array | null {
    this.sweep.down(this.network.state, this.priced);
    return (x) =>
      this.known.covers[x] === 1
        ? (this.sweep.through[x] as Float64Array).map((t) => t + this.constant)
        : null;
  }

  /**
   * Moves the prices along the excess, to raise the bound towards `target`.
   * @returns false where the prices are as good as they get for the last combination
   */
  reprice(bound: number, target: number): boolean {
    let length = 0;
    for (let k = 0; k < this.prices.length; k++) {
      const excess = this.excess[k] as number;
      if (excess > 0 || this.prices[k] !== 0) length += excess * excess;
    }
    if (length === 0) return false;
    const step = (target - bound) / length;
    let changed = false;
    for (let k = 0; k < this.prices.length; k++) {
      const price = Math.max(0, (this.prices[k] as number) + step * (this.excess[k] as number));
      if (price !== this.prices[k]) changed = true;
      this.prices[k] = price;
    }
    return changed;
  }
}
