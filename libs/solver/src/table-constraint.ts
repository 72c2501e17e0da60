import { lowestBit } from './bits.js';
import type { ClassOrder } from './class-order.js';
import { classInclusion, nodeInclusion } from './inclusion.js';
import type { Constraint, Effort } from './constraint.js';
import type { DecisionDiagram, Layer } from './decision-diagram.js';
import { isSatisfied } from './is-satisfied.js';
import { neededPositions } from './needed-positions.js';
import type { Network } from './network.js';
import type { ConstraintSpec } from './problem.js';

/** Edges up to which a diagram counts as little work. */
const SMALL = 60;
const MEDIUM = 600;

/** A table as a decision diagram: one sweep down and one up find the classes that lie on a path. */
export class TableConstraint implements Constraint {
  readonly id: string;
  readonly effort: Effort;
  /** Nodes of each layer that are reached from the root, and how many. */
  private readonly reached: Int32Array[];
  private readonly reachedCount: Int32Array;
  /** Sweep in which a node was last reached, or last found to lead to the end. */
  private readonly reachedIn: Int32Array[];
  private readonly leadingIn: Int32Array[];
  private sweep = 0;
  private readonly supported: Uint32Array[];
  /** Present classes on the edges of each node that lead to the end. */
  private readonly covered: Uint32Array[];
  private readonly present: Int32Array;
  private costBefore: Float64Array[] | null = null;
  private costAfter: Float64Array[] | null = null;
  private cheapest: Float64Array[] | null = null;
  private includes: readonly Uint8Array[] | null = null;

  constructor(
    readonly spec: ConstraintSpec,
    private readonly bound: {
      readonly diagram: DecisionDiagram;
      readonly views: Int32Array;
      readonly sizes: readonly number[];
    },
  ) {
    const { diagram } = bound;
    this.id = spec.id;
    this.effort = diagram.edges <= SMALL ? 0 : diagram.edges <= MEDIUM ? 1 : 2;
    this.reached = diagram.layers.map((l) => new Int32Array(l.nodes));
    this.reachedIn = diagram.layers.map((l) => new Int32Array(l.nodes));
    this.leadingIn = diagram.layers.map((l) => new Int32Array(l.nodes));
    this.present = new Int32Array(Math.max(...diagram.layers.map((l) => l.classes)));
    this.reachedCount = new Int32Array(diagram.layers.length);
    this.supported = diagram.layers.map((l) => new Uint32Array(l.words));
    this.covered = diagram.layers.map((l) => new Uint32Array(l.nodes * l.words));
  }

  get views(): Int32Array {
    return this.bound.views;
  }

  propagate(network: Network): boolean {
    this.sweepDown(network);
    if (!this.sweepUp(network)) return false;
    for (let p = 0; p < this.views.length; p++)
      network.keep(this.views[p] as number, this.supported[p] as Uint32Array);
    if (this.isComplete()) network.settle();
    return true;
  }

  explain(network: Network): number[] {
    return neededPositions(network, this.views, () => {
      this.sweepDown(network);
      return !this.sweepUp(network);
    });
  }

  allows(classes: Int32Array): boolean {
    return this.leadsToEnd(0, 0, classes);
  }

  isExact(): boolean {
    return true;
  }

  isSatisfied(solution: Int32Array): boolean {
    return isSatisfied(this.spec, this.bound.sizes, solution);
  }

  cheapestOf(network: Network, costs: readonly Float64Array[]): readonly Float64Array[] {
    const { layers } = this.bound.diagram;
    const before = (this.costBefore ??= layers.map((l) => new Float64Array(l.nodes)));
    const after = (this.costAfter ??= layers.map((l) => new Float64Array(l.nodes)));
    const cheapest = (this.cheapest ??= layers.map((l) => new Float64Array(l.classes)));
    for (const list of before) list.fill(Infinity);
    for (const list of cheapest) list.fill(Infinity);
    if (before[0]) before[0][0] = 0;
    for (let p = 0; p + 1 < layers.length; p++) {
      const layer = layers[p] as Layer;
      const cost = costs[p] as Float64Array;
      const [here, there] = [before[p] as Float64Array, before[p + 1] as Float64Array];
      const count = this.collectPresent(network, p);
      for (let node = 0; node < layer.nodes; node++) {
        const sofar = here[node] as number;
        if (sofar === Infinity) continue;
        for (let i = 0; i < count; i++) {
          const c = this.present[i] as number;
          const target = layer.next[node * layer.classes + c] as number;
          if (target < 0) continue;
          const total = sofar + (cost[c] as number);
          if (total < (there[target] as number)) there[target] = total;
        }
      }
    }
    for (let p = layers.length - 1; p >= 0; p--) {
      const layer = layers[p] as Layer;
      const cost = costs[p] as Float64Array;
      const [here, rest] = [after[p] as Float64Array, after[p + 1]];
      const [sofar, best] = [before[p] as Float64Array, cheapest[p] as Float64Array];
      const count = this.collectPresent(network, p);
      for (let node = 0; node < layer.nodes; node++) {
        here[node] = Infinity;
        if (sofar[node] === Infinity) continue;
        for (let i = 0; i < count; i++) {
          const c = this.present[i] as number;
          const target = layer.next[node * layer.classes + c] as number;
          if (target < 0) continue;
          const onward = (cost[c] as number) + (rest ? (rest[target] as number) : 0);
          if (onward < (here[node] as number)) here[node] = onward;
          const total = (sofar[node] as number) + onward;
          if (total < (best[c] as number)) best[c] = total;
        }
      }
    }
    return cheapest;
  }

  orderOf(position: number): ClassOrder | null {
    this.includes ??= nodeInclusion(this.bound.diagram);
    return this.includes && classInclusion(this.bound.diagram, this.includes, position);
  }

  /** Lists the present classes of a position. @returns how many */
  private collectPresent(network: Network, position: number): number {
    const { offset, words } = network.view(this.views[position] as number);
    let n = 0;
    for (let w = 0; w < words; w++)
      for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1)
        this.present[n++] = (w << 5) + lowestBit(word);
    return n;
  }

  /** Whether the classes of the positions from `position` on lead from a node to the end. */
  private leadsToEnd(from: number, position: number, classes: ArrayLike<number>): boolean {
    const { layers } = this.bound.diagram;
    let node = layers.length > 0 && (layers[0] as Layer).nodes === 0 ? -1 : from;
    for (let p = position; p < layers.length && node >= 0; p++) {
      const { next, classes: count } = layers[p] as Layer;
      node = next[node * count + (classes[p] as number)] as number;
    }
    return node >= 0;
  }

  /** Collects the nodes reached from the root through present classes. */
  private sweepDown(network: Network): void {
    const { state } = network;
    const { layers } = this.bound.diagram;
    const sweep = ++this.sweep;
    (this.reached[0] as Int32Array)[0] = 0;
    this.reachedCount[0] = (layers[0] as Layer).nodes > 0 ? 1 : 0;
    for (let p = 0; p + 1 < layers.length; p++) {
      const { first, to, masks, words } = layers[p] as Layer;
      const { offset } = network.view(this.views[p] as number);
      const here = this.reached[p] as Int32Array;
      const there = this.reached[p + 1] as Int32Array;
      const seen = this.reachedIn[p + 1] as Int32Array;
      let count = 0;
      for (let i = 0; i < (this.reachedCount[p] as number); i++) {
        const node = here[i] as number;
        const end = first[node + 1] as number;
        for (let e = first[node] as number; e < end; e++) {
          const target = to[e] as number;
          if (seen[target] === sweep) continue;
          for (let w = 0; w < words; w++)
            if (((masks[e * words + w] as number) & (state[offset + w] as number)) !== 0) {
              seen[target] = sweep;
              there[count++] = target;
              break;
            }
        }
      }
      this.reachedCount[p + 1] = count;
    }
  }

  /** After both sweeps: whether every combination of supported classes is a path, so that nothing more can be removed. */
  private isComplete(): boolean {
    const { sweep } = this;
    const { layers } = this.bound.diagram;
    for (let p = 0; p < layers.length; p++) {
      const { words } = layers[p] as Layer;
      const reached = this.reached[p] as Int32Array;
      const leading = this.leadingIn[p] as Int32Array;
      const covered = this.covered[p] as Uint32Array;
      const supported = this.supported[p] as Uint32Array;
      for (let i = 0; i < (this.reachedCount[p] as number); i++) {
        const node = reached[i] as number;
        if (leading[node] !== sweep) continue;
        for (let w = 0; w < words; w++) if (covered[node * words + w] !== supported[w]) return false;
      }
    }
    return true;
  }

  /** Collects the classes on edges that are reached and lead to the end. @returns whether there is a path */
  private sweepUp(network: Network): boolean {
    const { state } = network;
    const { sweep } = this;
    const { layers } = this.bound.diagram;
    for (let p = layers.length - 1; p >= 0; p--) {
      const { first, to, masks, words } = layers[p] as Layer;
      const { offset } = network.view(this.views[p] as number);
      const reached = this.reached[p] as Int32Array;
      const leading = this.leadingIn[p] as Int32Array;
      const rest = p + 1 < layers.length ? (this.leadingIn[p + 1] as Int32Array) : null;
      const supported = (this.supported[p] as Uint32Array).fill(0);
      const covered = this.covered[p] as Uint32Array;
      let any = false;
      for (let i = 0; i < (this.reachedCount[p] as number); i++) {
        const node = reached[i] as number;
        const end = first[node + 1] as number;
        for (let w = 0; w < words; w++) covered[node * words + w] = 0;
        for (let e = first[node] as number; e < end; e++) {
          if (rest && rest[to[e] as number] !== sweep) continue;
          for (let w = 0; w < words; w++) {
            const present = (masks[e * words + w] as number) & (state[offset + w] as number);
            if (present === 0) continue;
            any = true;
            leading[node] = sweep;
            supported[w] = (supported[w] as number) | present;
            covered[node * words + w] = (covered[node * words + w] as number) | present;
          }
        }
      }
      if (!any) return false;
    }
    return true;
  }
}
