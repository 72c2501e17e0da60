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
    this.reachedCount = new Int32Array(diagram.layers.length);
    this.supported = diagram.layers.map((l) => new Uint32Array(l.words));
  }

  get views(): Int32Array {
    return this.bound.views;
  }

  propagate(network: Network): boolean {
    this.sweepDown(network);
    if (!this.sweepUp(network)) return false;
    for (let p = 0; p < this.views.length; p++)
      network.keep(this.views[p] as number, this.supported[p] as Uint32Array);
    return true;
  }

  explain(network: Network): number[] {
    return neededPositions(network, this.views, () => {
      this.sweepDown(network);
      return !this.sweepUp(network);
    });
  }

  isSatisfied(solution: Int32Array): boolean {
    return isSatisfied(this.spec, this.bound.sizes, solution);
  }

  keepFlips(network: Network, assignment: Int32Array, flips: Uint32Array): void {
    const { layers } = this.bound.diagram;
    const classes = Array.from(this.views, (id) => {
      const view = network.view(id);
      return view.classOf[assignment[view.variable] as number] as number;
    });
    let node = 0;
    for (let p = 0; p < layers.length; p++) {
      const layer = layers[p] as Layer;
      const { offset } = network.view(this.views[p] as number);
      const possible = (this.supported[p] as Uint32Array).fill(0);
      for (let e = layer.first[node] as number; e < (layer.first[node + 1] as number); e++) {
        if (!this.leadsToEnd(layer.to[e] as number, p + 1, classes)) continue;
        for (let w = 0; w < layer.words; w++)
          possible[w] = (possible[w] as number) | (layer.masks[e * layer.words + w] as number);
      }
      for (let w = 0; w < layer.words; w++)
        flips[offset + w] = (flips[offset + w] as number) & (possible[w] as number);
      node = layer.next[node * layer.classes + (classes[p] as number)] as number;
    }
  }

  /** Whether the classes of the positions from `position` on lead from a node to the end. */
  private leadsToEnd(from: number, position: number, classes: readonly number[]): boolean {
    const { layers } = this.bound.diagram;
    let node = from;
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
      let any = false;
      for (let i = 0; i < (this.reachedCount[p] as number); i++) {
        const node = reached[i] as number;
        const end = first[node + 1] as number;
        for (let e = first[node] as number; e < end; e++) {
          if (rest && rest[to[e] as number] !== sweep) continue;
          for (let w = 0; w < words; w++) {
            const present = (masks[e * words + w] as number) & (state[offset + w] as number);
            if (present === 0) continue;
            any = true;
            leading[node] = sweep;
            supported[w] = (supported[w] as number) | present;
          }
        }
      }
      if (!any) return false;
    }
    return true;
  }
}
