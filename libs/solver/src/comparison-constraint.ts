import { lowestBit } from './bits.js';
import type { ClassOrder } from './class-order.js';
import type { Constraint, Effort } from './constraint.js';
import { isSatisfied } from './is-satisfied.js';
import { neededPositions } from './needed-positions.js';
import type { Network } from './network.js';
import type { ConstraintSpec } from './problem.js';

const FAR = 0x3fffffff;
/** Class tuples up to which a comparison counts as little work. */
const SMALL = 60;
const MEDIUM = 1000;

/** Integers over the class tuples of some positions, row-major. */
export interface LoadTable {
  readonly counts: readonly number[];
  readonly loads: Int32Array;
}

/** Least and greatest load over the present tuples, and the least for each class of each position. */
class LoadScan {
  least = 0;
  greatest = 0;
  readonly leastOf: Int32Array[];
  readonly supported: Uint32Array[];
  private readonly present: Int32Array[];
  private readonly presentCount: Int32Array;
  private readonly strides: number[];
  private readonly cursor: Int32Array;
  private readonly fewestLoad: number;
  private readonly mostLoad: number;
  private cheapestLoad: Float64Array | null = null;
  private cheapest: Float64Array[] | null = null;

  constructor(
    readonly table: LoadTable,
    readonly views: Int32Array,
  ) {
    const { counts } = table;
    this.fewestLoad = table.loads.reduce((a, b) => Math.min(a, b), FAR);
    this.mostLoad = table.loads.reduce((a, b) => Math.max(a, b), -FAR);
    this.leastOf = counts.map((c) => new Int32Array(c));
    this.present = counts.map((c) => new Int32Array(c));
    this.supported = counts.map((c) => new Uint32Array((c + 31) >>> 5));
    this.presentCount = new Int32Array(counts.length);
    this.cursor = new Int32Array(counts.length);
    this.strides = counts.map((_, i) => counts.slice(i + 1).reduce((a, b) => a * b, 1));
  }

  scan(network: Network): void {
    const dimensions = this.views.length;
    const { loads } = this.table;
    if (dimensions === 0) {
      this.least = this.greatest = loads[0] as number;
      return;
    }
    this.collectPresent(network);
    this.least = FAR;
    this.greatest = -FAR;
    const last = dimensions - 1;
    const lastPresent = this.present[last] as Int32Array;
    const lastCount = this.presentCount[last] as number;
    const lastLeast = this.leastOf[last] as Int32Array;
    this.cursor.fill(0);
    for (;;) {
      let base = 0;
      for (let p = 0; p < last; p++) base += this.classAt(p) * (this.strides[p] as number);
      let rowLeast = FAR;
      for (let i = 0; i < lastCount; i++) {
        const c = lastPresent[i] as number;
        const load = loads[base + c] as number;
        if (load < (lastLeast[c] as number)) lastLeast[c] = load;
        if (load < rowLeast) rowLeast = load;
        if (load > this.greatest) this.greatest = load;
      }
      if (rowLeast < this.least) this.least = rowLeast;
      for (let p = 0; p < last; p++) {
        const c = this.classAt(p);
        const least = this.leastOf[p] as Int32Array;
        if (rowLeast < (least[c] as number)) least[c] = rowLeast;
      }
      let p = last - 1;
      while (p >= 0) {
        this.cursor[p] = (this.cursor[p] as number) + 1;
        if ((this.cursor[p] as number) < (this.presentCount[p] as number)) break;
        this.cursor[p--] = 0;
      }
      if (p < 0) return;
    }
  }

  /** Keeps the classes that reach a load of at most `most`. */
  keepUpTo(network: Network, most: number): boolean {
    let changed = false;
    for (let p = 0; p < this.views.length; p++) {
      const supported = (this.supported[p] as Uint32Array).fill(0);
      const present = this.present[p] as Int32Array;
      const least = this.leastOf[p] as Int32Array;
      for (let i = 0; i < (this.presentCount[p] as number); i++) {
        const c = present[i] as number;
        if ((least[c] as number) <= most)
          supported[c >>> 5] = (supported[c >>> 5] as number) | (1 << (c & 31));
      }
      if (network.keep(this.views[p] as number, supported)) changed = true;
    }
    return changed;
  }

  /**
   * Scans, and returns what the cheapest present tuple with at most a given load costs, given a cost for each class.
   */
  cheapestUpTo(network: Network, costs: readonly Float64Array[]): (load: number) => number {
    this.collectPresent(network);
    const cheapest = (this.cheapestLoad ??= new Float64Array(this.mostLoad - this.fewestLoad + 1)).fill(
      Infinity,
    );
    this.forEachTuple(costs, (load, cost) => {
      const at = load - this.fewestLoad;
      if (cost < (cheapest[at] as number)) cheapest[at] = cost;
    });
    for (let at = 1; at < cheapest.length; at++)
      if ((cheapest[at - 1] as number) < (cheapest[at] as number)) cheapest[at] = cheapest[at - 1] as number;
    return (load) => {
      const at = Math.min(load - this.fewestLoad, cheapest.length - 1);
      return at < 0 ? Infinity : (cheapest[at] as number);
    };
  }

  /** For each class the least cost of a present tuple with it, plus what the other side costs at the tuple's load. */
  cheapestWith(costs: readonly Float64Array[], other: (load: number) => number): readonly Float64Array[] {
    const cheapest = (this.cheapest ??= this.table.counts.map((c) => new Float64Array(c)));
    for (const list of cheapest) list.fill(Infinity);
    this.forEachTuple(costs, (load, cost) => {
      const total = cost + other(load);
      for (let p = 0; p < cheapest.length; p++) {
        const [list, c] = [cheapest[p] as Float64Array, this.classAt(p)];
        if (total < (list[c] as number)) list[c] = total;
      }
    });
    return cheapest;
  }

  private forEachTuple(costs: readonly Float64Array[], visit: (load: number, cost: number) => void): void {
    const dimensions = this.views.length;
    this.cursor.fill(0);
    for (;;) {
      let index = 0;
      let cost = 0;
      for (let p = 0; p < dimensions; p++) {
        const c = this.classAt(p);
        index += c * (this.strides[p] as number);
        cost += (costs[p] as Float64Array)[c] as number;
      }
      visit(this.load(index), cost);
      let p = dimensions - 1;
      while (p >= 0) {
        this.cursor[p] = (this.cursor[p] as number) + 1;
        if ((this.cursor[p] as number) < (this.presentCount[p] as number)) break;
        this.cursor[p--] = 0;
      }
      if (p < 0) return;
    }
  }

  /** Load of the classes that start at a place in a list. */
  loadOf(classes: Int32Array, start: number): number {
    let index = 0;
    for (let p = 0; p < this.views.length; p++)
      index += (classes[start + p] as number) * (this.strides[p] as number);
    return this.load(index);
  }

  load(index: number): number {
    return this.table.loads[index] as number;
  }

  /** A class that never loads more may stand in. */
  orderOf(position: number): ClassOrder {
    const n = this.table.counts[position] as number;
    const stride = this.strides[position] as number;
    const order = new Uint8Array(n * n).fill(1);
    const { loads } = this.table;
    for (let at = 0; at < loads.length; at++) {
      const a = Math.floor(at / stride) % n;
      const first = at - a * stride;
      for (let b = 0; b < n; b++)
        if ((loads[first + b * stride] as number) > (loads[at] as number)) order[a * n + b] = 0;
    }
    return order;
  }

  private classAt(position: number): number {
    return (this.present[position] as Int32Array)[this.cursor[position] as number] as number;
  }

  private collectPresent(network: Network): void {
    const { state } = network;
    for (let p = 0; p < this.views.length; p++) {
      const { offset, words } = network.view(this.views[p] as number);
      const present = this.present[p] as Int32Array;
      let n = 0;
      for (let w = 0; w < words; w++)
        for (let word = state[offset + w] as number; word !== 0; word &= word - 1)
          present[n++] = (w << 5) + lowestBit(word);
      this.presentCount[p] = n;
      (this.leastOf[p] as Int32Array).fill(FAR);
    }
  }
}

/**
 * demand ≤ limit over separate sides, each side an integer load: met where the two loads add up to 0 or less.
 * A class has support exactly when its least load and the least load of the other side add up to 0 or less;
 * where the sides share a variable this removes less, and decides once that variable is fixed.
 */
export class ComparisonConstraint implements Constraint {
  readonly id: string;
  readonly effort: Effort;
  readonly views: Int32Array;
  private readonly demand: LoadScan;
  private readonly limit: LoadScan;
  /** Variables that stand on both sides. */
  private readonly shared: ReadonlySet<number>;
  readonly cheapestOf?: (network: Network, costs: readonly Float64Array[]) => readonly Float64Array[];

  constructor(
    readonly spec: ConstraintSpec,
    private readonly bound: {
      readonly demand: LoadTable;
      readonly limit: LoadTable;
      /** Views of the demand's positions, then of the limit's. */
      readonly views: Int32Array;
      /** Variables of the demand's positions, then of the limit's. */
      readonly variables: readonly number[];
      readonly sizes: readonly number[];
    },
  ) {
    const { demand, limit, views, variables } = bound;
    this.id = spec.id;
    this.views = views;
    this.demand = new LoadScan(demand, views.slice(0, demand.counts.length));
    this.limit = new LoadScan(limit, views.slice(demand.counts.length));
    const ofLimit = new Set(variables.slice(demand.counts.length));
    this.shared = new Set(variables.slice(0, demand.counts.length).filter((x) => ofLimit.has(x)));
    if (this.shared.size === 0) this.cheapestOf = (network, costs) => this.cheapestSides(network, costs);
    const tuples = demand.loads.length + limit.loads.length;
    this.effort = tuples <= SMALL ? 0 : tuples <= MEDIUM ? 1 : 2;
  }

  propagate(network: Network): boolean {
    for (;;) {
      if (this.isRefuted(network)) return false;
      if (this.demand.greatest + this.limit.greatest <= 0) {
        network.settle();
        return true;
      }
      const demandChanged = this.demand.keepUpTo(network, -this.limit.least);
      const limitChanged = this.limit.keepUpTo(network, -this.demand.least);
      // Separate sides are done after one round: the least loads still stand.
      if (this.shared.size === 0 || !(demandChanged || limitChanged)) return true;
    }
  }

  private cheapestSides(network: Network, costs: readonly Float64Array[]): readonly Float64Array[] {
    const n = this.demand.views.length;
    const [ofDemand, ofLimit] = [costs.slice(0, n), costs.slice(n)];
    const demandUpTo = this.demand.cheapestUpTo(network, ofDemand);
    const limitUpTo = this.limit.cheapestUpTo(network, ofLimit);
    return [
      ...this.demand.cheapestWith(ofDemand, (load) => limitUpTo(-load)),
      ...this.limit.cheapestWith(ofLimit, (load) => demandUpTo(-load)),
    ];
  }

  explain(network: Network): number[] {
    return neededPositions(network, this.views, () => this.isRefuted(network));
  }

  allows(classes: Int32Array): boolean {
    const n = this.demand.views.length;
    return this.demand.loadOf(classes, 0) + this.limit.loadOf(classes, n) <= 0;
  }

  orderOf(position: number): ClassOrder | null {
    if (this.shared.size > 0) return null;
    const n = this.demand.views.length;
    return position < n ? this.demand.orderOf(position) : this.limit.orderOf(position - n);
  }

  isExact(): boolean {
    return this.shared.size === 0;
  }

  isSatisfied(solution: Int32Array): boolean {
    return isSatisfied(this.spec, this.bound.sizes, solution);
  }

  private isRefuted(network: Network): boolean {
    this.demand.scan(network);
    this.limit.scan(network);
    return this.demand.least + this.limit.least > 0;
  }
}
