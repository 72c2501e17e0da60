/** An order in which variables are fixed: each below its parent, and every scope along one branch. */
export interface EliminationTree {
  /** Parent of each variable; −1 for roots and for variables left out. */
  readonly parent: Int32Array;
  readonly children: readonly (readonly number[])[];
  readonly roots: readonly number[];
  /** Distance from the root. */
  readonly depth: Int32Array;
  /** Children before parents. */
  readonly order: readonly number[];
}

/** How bad it is to eliminate a variable now: what it would tie together, and how many edges that adds. */
function burden(x: number, neighbours: readonly ReadonlySet<number>[], weight: Float64Array): number {
  const around = [...(neighbours[x] as ReadonlySet<number>)];
  let load = weight[x] as number;
  let missing = 0;
  for (const [i, a] of around.entries()) {
    load += weight[a] as number;
    for (const b of around.slice(i + 1)) if (!(neighbours[a] as ReadonlySet<number>).has(b)) missing++;
  }
  return load + 0.3 * missing;
}

/**
 * Eliminates, again and again, the variable with the least burden; its parent is the neighbour eliminated next.
 * @param weight of each variable: the logarithm of its domain
 */
export function eliminationTree(
  variables: readonly number[],
  scopes: readonly (readonly number[])[],
  weight: Float64Array,
): EliminationTree {
  const total = weight.length;
  const neighbours: Set<number>[] = Array.from({ length: total }, () => new Set());
  for (const scope of scopes)
    for (const a of scope) for (const b of scope) if (a !== b) neighbours[a]?.add(b);
  const left = new Set(variables);
  const above: number[][] = Array.from({ length: total }, () => []);
  const order: number[] = [];
  const burdens = new Map(variables.map((x) => [x, burden(x, neighbours, weight)]));
  while (left.size > 0) {
    let next = -1;
    for (const x of left)
      if (next < 0 || (burdens.get(x) as number) < (burdens.get(next) as number)) next = x;
    const around = [...(neighbours[next] as Set<number>)];
    above[next] = around;
    for (const a of around) {
      neighbours[a]?.delete(next);
      for (const b of around) if (a !== b) neighbours[a]?.add(b);
    }
    left.delete(next);
    order.push(next);
    const touched = new Set(around.flatMap((a) => [a, ...(neighbours[a] as Set<number>)]));
    for (const x of touched) burdens.set(x, burden(x, neighbours, weight));
  }
  const place = new Int32Array(total);
  for (const [i, x] of order.entries()) place[x] = i;
  const parent = new Int32Array(total).fill(-1);
  const children: number[][] = Array.from({ length: total }, () => []);
  const roots: number[] = [];
  for (const x of order) {
    const ups = above[x] as number[];
    if (ups.length === 0) {
      roots.push(x);
      continue;
    }
    const up = ups.reduce((a, b) => ((place[a] as number) < (place[b] as number) ? a : b));
    parent[x] = up;
    children[up]?.push(x);
  }
  const depth = new Int32Array(total);
  for (const x of [...order].reverse()) {
    const up = parent[x] as number;
    depth[x] = up < 0 ? 0 : (depth[up] as number) + 1;
  }
  return { parent, children, roots, depth, order };
}
