import type { Constraint, Effort } from './constraint.js';
import type { DecisionDiagram, Layer } from './decision-diagram.js';
import { isSatisfied } from './is-satisfied.js';
import { neededPositions } from './needed-positions.js';
import type { Network } from './network.js';
import type { ConstraintSpec } from './problem.js';

/** Edges up to which a diagram counts as little work. */
const SMALL = 60;
const MEDIUM = 600;

const has = (set: Uint32Array, at: number, member: number): boolean =>
  (((set[at + (member >>> 5)] as number) >>> (member & 31)) & 1) === 1;

/** A table as a decision diagram: one sweep down and one up find the classes that lie on a path. */
export class TableConstraint implements Constraint {
  readonly id: string;
  readonly effort: Effort;
  private readonly reached: Uint8Array[];
  private readonly leading: Uint8Array[];
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
    this.reached = diagram.layers.map((l) => new Uint8Array(l.nodes));
    this.leading = diagram.layers.map((l) => new Uint8Array(l.nodes));
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
    // The path of the assignment, node by node.
    const path = [0];
    for (let p = 0; p + 1 < layers.length; p++) {
      const layer = layers[p] as Layer;
      for (let e = 0; e < layer.edges; e++)
        if (layer.from[e] === path[p] && has(layer.masks, e * layer.words, classes[p] as number)) {
          path.push(layer.to[e] as number);
          break;
        }
    }
    let rest: Uint8Array | null = null;
    for (let p = layers.length - 1; p >= 0; p--) {
      const layer = layers[p] as Layer;
      const possible = (this.supported[p] as Uint32Array).fill(0);
      const leading = (this.leading[p] as Uint8Array).fill(0);
      for (let e = 0; e < layer.edges; e++) {
        if (rest && rest[layer.to[e] as number] === 0) continue;
        const from = layer.from[e] as number;
        const mask = e * layer.words;
        if (from === path[p])
          for (let w = 0; w < layer.words; w++)
            possible[w] = (possible[w] as number) | (layer.masks[mask + w] as number);
        if (has(layer.masks, mask, classes[p] as number)) leading[from] = 1;
      }
      const { offset } = network.view(this.views[p] as number);
      for (let w = 0; w < layer.words; w++)
        flips[offset + w] = (flips[offset + w] as number) & (possible[w] as number);
      rest = leading;
    }
  }

  /** Marks the nodes reached from the root through present classes. */
  private sweepDown(network: Network): void {
    const { state } = network;
    const { layers } = this.bound.diagram;
    const root = (this.reached[0] as Uint8Array).fill(0);
    if (root.length > 0) root[0] = 1;
    for (let p = 0; p + 1 < layers.length; p++) {
      const { edges, from, to, masks, words } = layers[p] as Layer;
      const { offset } = network.view(this.views[p] as number);
      const here = this.reached[p] as Uint8Array;
      const next = (this.reached[p + 1] as Uint8Array).fill(0);
      for (let e = 0; e < edges; e++) {
        const target = to[e] as number;
        if (next[target] === 1 || here[from[e] as number] === 0) continue;
        for (let w = 0; w < words; w++)
          if (((masks[e * words + w] as number) & (state[offset + w] as number)) !== 0) {
            next[target] = 1;
            break;
          }
      }
    }
  }

  /** Collects the classes on edges that are reached and lead to the end. @returns whether there is a path */
  private sweepUp(network: Network): boolean {
    const { state } = network;
    const { layers } = this.bound.diagram;
    let rest: Uint8Array | null = null;
    for (let p = layers.length - 1; p >= 0; p--) {
      const { edges, from, to, masks, words } = layers[p] as Layer;
      const { offset } = network.view(this.views[p] as number);
      const reached = this.reached[p] as Uint8Array;
      const leading = (this.leading[p] as Uint8Array).fill(0);
      const supported = (this.supported[p] as Uint32Array).fill(0);
      let any = false;
      for (let e = 0; e < edges; e++) {
        const node = from[e] as number;
        if (reached[node] === 0 || (rest && rest[to[e] as number] === 0)) continue;
        for (let w = 0; w < words; w++) {
          const present = (masks[e * words + w] as number) & (state[offset + w] as number);
          if (present === 0) continue;
          any = true;
          leading[node] = 1;
          supported[w] = (supported[w] as number) | present;
        }
      }
      if (!any) return false;
      rest = leading;
    }
    return true;
  }
}
