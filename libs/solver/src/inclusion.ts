import type { ClassOrder } from './class-order.js';
import type { DecisionDiagram, Layer } from './decision-diagram.js';

/** Pairs of nodes of one layer up to which they are compared. */
const MOST_PAIRS = 250_000;

/**
 * For each layer, whether the paths of a node are among those of another: `[a * nodes + b]`; behind the last layer the end alone.
 * @returns null for diagrams that are too wide
 */
export function nodeInclusion({ layers }: DecisionDiagram): Uint8Array[] | null {
  if (layers.some((l) => l.nodes * l.nodes > MOST_PAIRS)) return null;
  const includes: Uint8Array[] = [Uint8Array.of(1)];
  for (const { nodes, classes, next } of [...layers].reverse()) {
    const below = includes[0] as Uint8Array;
    const width = Math.sqrt(below.length);
    const own = new Uint8Array(nodes * nodes);
    for (let a = 0; a < nodes; a++)
      for (let b = 0; b < nodes; b++) {
        let among = 1;
        for (let c = 0; c < classes && among === 1; c++) {
          const [from, to] = [next[a * classes + c] as number, next[b * classes + c] as number];
          if (from >= 0 && (to < 0 || below[from * width + to] === 0)) among = 0;
        }
        own[a * nodes + b] = among;
      }
    includes.unshift(own);
  }
  return includes;
}

/** Classes of a layer by what they lead to: b may stand in for a where from every node it leads to no less. */
export function classInclusion(
  { layers }: DecisionDiagram,
  includes: readonly Uint8Array[],
  position: number,
): ClassOrder {
  const { nodes, classes, next } = layers[position] as Layer;
  const below = includes[position + 1] as Uint8Array;
  const width = Math.sqrt(below.length);
  const order = new Uint8Array(classes * classes);
  for (let a = 0; a < classes; a++)
    for (let b = 0; b < classes; b++) {
      let stands = 1;
      for (let n = 0; n < nodes && stands === 1; n++) {
        const [from, to] = [next[n * classes + a] as number, next[n * classes + b] as number];
        if (from >= 0 && (to < 0 || below[from * width + to] === 0)) stands = 0;
      }
      order[a * classes + b] = stands;
    }
  return order;
}
