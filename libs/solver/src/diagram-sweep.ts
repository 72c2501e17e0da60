import type { AndOrDiagram } from './and-or-diagram.js';
import type { Layout } from './layout.js';

/** Costs, or any other additive weights, of the groups of each variable. */
export type GroupWeights = readonly Float64Array[];

/**
 * Least totals over all combinations of a diagram that lie within a state. One pass up gives the least total; one pass down
 * the least total with each group. A variable outside the diagram is fixed and adds nothing.
 */
export class DiagramSweep {
  /** Least total below and with each node; Infinity where nothing is left. */
  private readonly least: Float64Array;
  /** Least total of the nodes below each edge. */
  private readonly leastBelow: Float64Array;
  /** Lightest present group of each edge, and its weight; −1 where there is none. */
  private readonly bestGroup: Int32Array;
  private readonly bestWeight: Float64Array;
  private readonly bestEdge: Int32Array;
  /** Least total of everything that is not below or at a node, and the edge above that it comes by (−1 at a root). */
  private readonly outside: Float64Array;
  private readonly edgeAbove: Int32Array;
  private readonly nodeOfEdge: Int32Array;
  /** By variable and group: least total with it, and the edge it comes by. */
  readonly through: readonly Float64Array[];
  private readonly throughEdge: readonly Int32Array[];
  total = Infinity;

  constructor(
    private readonly diagram: AndOrDiagram,
    private readonly layout: Layout,
  ) {
    const nodes = diagram.variable.length;
    const edges = diagram.firstGroup.length - 1;
    this.least = new Float64Array(nodes);
    this.outside = new Float64Array(nodes);
    this.edgeAbove = new Int32Array(nodes);
    this.bestEdge = new Int32Array(nodes);
    this.leastBelow = new Float64Array(edges);
    this.bestGroup = new Int32Array(edges);
    this.bestWeight = new Float64Array(edges);
    this.nodeOfEdge = new Int32Array(edges);
    for (let n = 0; n < nodes; n++) this.nodeOfEdge.fill(n, diagram.firstEdge[n], diagram.firstEdge[n + 1]);
    this.through = Array.from(layout.size, (size) => new Float64Array(size));
    this.throughEdge = Array.from(layout.size, (size) => new Int32Array(size));
  }

  /** Works out the least total of a state. @returns Infinity where no combination lies within it */
  up(state: Uint32Array, weights: GroupWeights): number {
    const { variable, firstEdge, firstGroup, groups, firstBelow, below, roots } = this.diagram;
    for (let n = 0; n < variable.length; n++) {
      const x = variable[n] as number;
      const weight = weights[x] as Float64Array;
      const domain = this.layout.domain[x] as number;
      let least = Infinity;
      for (let e = firstEdge[n] as number; e < (firstEdge[n + 1] as number); e++) {
        let sum = 0;
        for (let b = firstBelow[e] as number; b < (firstBelow[e + 1] as number); b++)
          sum += this.least[below[b] as number] as number;
        this.leastBelow[e] = sum;
        let bestWeight = Infinity;
        let bestGroup = -1;
        if (sum !== Infinity)
          for (let i = firstGroup[e] as number; i < (firstGroup[e + 1] as number); i++) {
            const g = groups[i] as number;
            if ((((state[domain + (g >>> 5)] as number) >>> (g & 31)) & 1) === 0) continue;
            const w = weight[g] as number;
            if (w < bestWeight || bestGroup < 0) {
              bestWeight = w;
              bestGroup = g;
            }
          }
        this.bestGroup[e] = bestGroup;
        this.bestWeight[e] = bestWeight;
        if (sum + bestWeight < least) {
          least = sum + bestWeight;
          this.bestEdge[n] = e;
        }
      }
      this.least[n] = least;
    }
    this.total = 0;
    for (const root of roots) this.total += this.least[root] as number;
    return this.total;
  }

  /** After `up` with a finite total: fills `through`, Infinity for groups in no combination. */
  down(state: Uint32Array, weights: GroupWeights): void {
    const { variable, firstEdge, firstGroup, groups, firstBelow, below, roots } = this.diagram;
    for (let n = 0; n < variable.length; n++)
      (this.through[variable[n] as number] as Float64Array).fill(Infinity);
    this.outside.fill(Infinity);
    for (const root of roots) {
      this.outside[root] = this.total - (this.least[root] as number);
      this.edgeAbove[root] = -1;
    }
    for (let n = variable.length - 1; n >= 0; n--) {
      const outside = this.outside[n] as number;
      if (outside === Infinity) continue;
      const x = variable[n] as number;
      const weight = weights[x] as Float64Array;
      const domain = this.layout.domain[x] as number;
      const through = this.through[x] as Float64Array;
      const throughEdge = this.throughEdge[x] as Int32Array;
      for (let e = firstEdge[n] as number; e < (firstEdge[n + 1] as number); e++) {
        if (this.bestGroup[e] === -1) continue;
        const rest = outside + (this.leastBelow[e] as number);
        for (let i = firstGroup[e] as number; i < (firstGroup[e + 1] as number); i++) {
          const g = groups[i] as number;
          if ((((state[domain + (g >>> 5)] as number) >>> (g & 31)) & 1) === 0) continue;
          const total = rest + (weight[g] as number);
          if (total < (through[g] as number)) {
            through[g] = total;
            throughEdge[g] = e;
          }
        }
        const edge = rest + (this.bestWeight[e] as number);
        for (let b = firstBelow[e] as number; b < (firstBelow[e + 1] as number); b++) {
          const d = below[b] as number;
          const around = edge - (this.least[d] as number);
          if (around < (this.outside[d] as number)) {
            this.outside[d] = around;
            this.edgeAbove[d] = e;
          }
        }
      }
    }
  }

  /** After `up`: writes the groups of a least combination into `groups`. */
  traceLeast(groups: Int32Array): void {
    for (const root of this.diagram.roots) this.traceNode(root, groups);
  }

  /** After `down`: writes the groups of a least combination with one group; `through` of it is finite. */
  traceThrough(x: number, group: number, groups: Int32Array): void {
    const { firstBelow, below, variable, roots } = this.diagram;
    let e = this.throughEdge[x]?.[group] as number;
    let node = this.nodeOfEdge[e] as number;
    groups[x] = group;
    for (let b = firstBelow[e] as number; b < (firstBelow[e + 1] as number); b++)
      this.traceNode(below[b] as number, groups);
    for (e = this.edgeAbove[node] as number; e >= 0; e = this.edgeAbove[node] as number) {
      const from = node;
      node = this.nodeOfEdge[e] as number;
      groups[variable[node] as number] = this.bestGroup[e] as number;
      for (let b = firstBelow[e] as number; b < (firstBelow[e + 1] as number); b++)
        if (below[b] !== from) this.traceNode(below[b] as number, groups);
    }
    for (const root of roots) if (root !== node) this.traceNode(root, groups);
  }

  private traceNode(node: number, groups: Int32Array): void {
    const { firstBelow, below, variable } = this.diagram;
    const e = this.bestEdge[node] as number;
    groups[variable[node] as number] = this.bestGroup[e] as number;
    for (let b = firstBelow[e] as number; b < (firstBelow[e + 1] as number); b++)
      this.traceNode(below[b] as number, groups);
  }
}
