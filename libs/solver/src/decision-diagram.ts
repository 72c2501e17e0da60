import { wordsFor } from './bits.js';

/** One layer of a diagram: edges from its nodes to the nodes of the next layer, each with the classes it stands for. */
export interface Layer {
  readonly nodes: number;
  readonly classes: number;
  readonly words: number;
  readonly edges: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** `words` words for each edge. */
  readonly masks: Uint32Array;
  /** Edges of node n are `first[n]` up to `first[n + 1]`. */
  readonly first: Int32Array;
  /** Node that class c of node n leads to, at `n * classes + c`; −1: nowhere. */
  readonly next: Int32Array;
}

/**
 * The allowed tuples of a table as paths through layers, one layer a position; equal remainders share a node.
 * The root is node 0 of layer 0; edges of the last layer lead to node 0, the end. Without tuples there are no layers' edges.
 */
export interface DecisionDiagram {
  readonly layers: readonly Layer[];
  readonly edges: number;
}

/** A node is the row of nodes its classes lead to (−1: nowhere). */
function nodeKey(row: Int32Array): string {
  let key = '';
  for (const child of row) key += child < 60_000 ? String.fromCharCode(child + 1) : `\uffff${String(child)};`;
  return key;
}

/** Builds the layer whose nodes are the distinct rows of `children`, and numbers each row. */
function buildLayer(children: Int32Array, classes: number): { layer: Layer; numbers: Int32Array } {
  const rows = children.length / classes;
  const words = wordsFor(classes);
  const numbers = new Int32Array(rows);
  const numberOf = new Map<string, number>();
  const from: number[] = [];
  const to: number[] = [];
  const masks: number[] = [];
  const first: number[] = [0];
  const next: number[] = [];
  let nodes = 0;
  for (let r = 0; r < rows; r++) {
    const row = children.subarray(r * classes, (r + 1) * classes);
    const key = nodeKey(row);
    const known = numberOf.get(key);
    if (known !== undefined) {
      numbers[r] = known;
      continue;
    }
    const edgeOf = new Map<number, number>();
    for (let c = 0; c < classes; c++) {
      const child = row[c] as number;
      if (child < 0) continue;
      let edge = edgeOf.get(child);
      if (edge === undefined) {
        edge = from.length;
        edgeOf.set(child, edge);
        from.push(nodes);
        to.push(child);
        for (let w = 0; w < words; w++) masks.push(0);
      }
      const at = edge * words + (c >>> 5);
      masks[at] = (masks[at] as number) | (1 << (c & 31));
    }
    let number = -1;
    if (edgeOf.size > 0) {
      number = nodes++;
      first.push(from.length);
      for (const child of row) next.push(child);
    }
    numberOf.set(key, number);
    numbers[r] = number;
  }
  const layer: Layer = {
    nodes,
    classes,
    words,
    edges: from.length,
    from: Int32Array.from(from),
    to: Int32Array.from(to),
    masks: Uint32Array.from(masks),
    first: Int32Array.from(first),
    next: Int32Array.from(next),
  };
  return { layer, numbers };
}

/** @param cells 1 for an allowed tuple, row-major over `counts` (at least one dimension) */
export function buildDecisionDiagram(counts: readonly number[], cells: ArrayLike<number>): DecisionDiagram {
  let numbers: Int32Array = new Int32Array(cells.length);
  for (let t = 0; t < cells.length; t++) numbers[t] = cells[t] === 1 ? 0 : -1;
  const layers: Layer[] = [];
  for (const classes of [...counts].reverse()) {
    const built = buildLayer(numbers, classes);
    layers.unshift(built.layer);
    numbers = built.numbers;
  }
  return { layers, edges: layers.reduce((sum, layer) => sum + layer.edges, 0) };
}
