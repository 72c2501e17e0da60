/** An order in which variables are fixed: each below its parent, and every scope along one branch. */
export interface EliminationTree {
  /** Parent of each variable; −1 for roots and for variables left out. */
  readonly parent: Int32Array;
  readonly children: readonly (readonly number[])[];
  readonly roots: readonly number[];
  /** Distance from the root. */
  readonly depth: Int32Array;
}

/** A relation that has to lie along one branch, with the logarithm of the number of classes it sees of each variable. */
export interface Scope {
  readonly variables: readonly number[];
  readonly bits: readonly number[];
}

/** A subtree of variables already placed. */
interface Block {
  readonly root: number;
  /** Relations that begin outside and end inside; how many variables and bits of each are inside. */
  readonly open: ReadonlyMap<number, { readonly count: number; readonly bits: number }>;
}

interface Placement {
  readonly tree: EliminationTree;
  /** Logarithm of the number of nodes that a diagram over the tree may have. */
  readonly size: number;
}

/** Trees tried, each with other random numbers: fewer where there is more to place. */
const MOST_TRIES = 100;
const LEAST_TRIES = 3;
const TRIED_PLACES = 250_000;
/** Size (a logarithm) that needs no better tree. */
const SMALL = 8;

/** Random numbers in [0, 1), the same every time. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

/**
 * Places variables from the leaves up: again and again the variable whose subtree the fewest cases of the others can tell apart.
 * A relation tells at most as many cases apart as it has combinations inside, or outside.
 */
class Placing {
  private readonly total: Float64Array;
  private readonly scopesOf: number[][];
  private readonly blocksAt: Set<Block>[];
  private readonly children: number[][];
  private readonly parent: Int32Array;

  constructor(
    private readonly task: {
      readonly variables: readonly number[];
      readonly scopes: readonly Scope[];
      readonly weight: Float64Array;
    },
    private readonly noise: () => number,
  ) {
    const { scopes, weight } = task;
    this.total = Float64Array.from(scopes, ({ bits }) => bits.reduce((a, b) => a + b, 0));
    this.scopesOf = Array.from(weight, () => []);
    for (const [s, { variables }] of scopes.entries()) for (const x of variables) this.scopesOf[x]?.push(s);
    this.blocksAt = Array.from(weight, () => new Set());
    this.children = Array.from(weight, () => []);
    this.parent = new Int32Array(weight.length).fill(-1);
  }

  /** @returns null where the diagram would be larger than `most` */
  place(most: number): Placement | null {
    const left = new Set(this.task.variables);
    const burdens = new Map([...left].map((x) => [x, this.burden(x)]));
    const sizes: number[] = [];
    const roots: number[] = [];
    const order: number[] = [];
    while (left.size > 0) {
      let next = -1;
      let least = Infinity;
      for (const x of left) {
        const burden = (burdens.get(x) as number) * (1 + this.noise());
        if (burden < least || next < 0) [next, least] = [x, burden];
      }
      const size = burdens.get(next) as number;
      if (size > most) return null;
      sizes.push(size);
      left.delete(next);
      order.push(next);
      const block = this.join(next);
      if (block.open.size === 0) roots.push(next);
      const changed = new Set(
        [...block.open.keys()].flatMap((s) => [...(this.task.scopes[s] as Scope).variables]),
      );
      for (const x of changed) if (left.has(x)) burdens.set(x, this.burden(x));
    }
    const depth = new Int32Array(this.parent.length);
    for (const x of order.reverse()) {
      const parent = this.parent[x] as number;
      depth[x] = parent < 0 ? 0 : (depth[parent] as number) + 1;
    }
    const largest = Math.max(0, ...sizes);
    const size = largest + Math.log2(sizes.reduce((sum, s) => sum + 2 ** (s - largest), 0) + 1e-9);
    return { tree: { parent: this.parent, children: this.children, roots, depth }, size };
  }

  /** Relations that a variable's subtree would leave open, were it placed now. */
  private openWith(x: number): Map<number, { count: number; bits: number }> {
    const open = new Map<number, { count: number; bits: number }>();
    const add = (s: number, count: number, bits: number): void => {
      const known = open.get(s);
      open.set(s, { count: (known?.count ?? 0) + count, bits: (known?.bits ?? 0) + bits });
    };
    for (const block of this.blocksAt[x] as Set<Block>)
      for (const [s, { count, bits }] of block.open) add(s, count, bits);
    for (const s of this.scopesOf[x] as number[]) {
      const { variables, bits } = this.task.scopes[s] as Scope;
      add(s, 1, bits[variables.indexOf(x)] as number);
    }
    for (const [s, { count }] of open) if (count === this.task.scopes[s]?.variables.length) open.delete(s);
    return open;
  }

  private burden(x: number): number {
    let load = this.task.weight[x] as number;
    for (const [s, { bits }] of this.openWith(x)) load += Math.min(bits, (this.total[s] as number) - bits);
    return load;
  }

  private join(x: number): Block {
    const block: Block = { root: x, open: this.openWith(x) };
    for (const below of this.blocksAt[x] as Set<Block>) {
      this.parent[below.root] = x;
      this.children[x]?.push(below.root);
      for (const s of below.open.keys())
        for (const y of (this.task.scopes[s] as Scope).variables)
          if (y !== x) this.blocksAt[y]?.delete(below);
    }
    for (const s of block.open.keys())
      for (const y of (this.task.scopes[s] as Scope).variables) if (y !== x) this.blocksAt[y]?.add(block);
    return block;
  }
}

/**
 * The best of some trees by the size of a diagram over it, the same every time.
 * @param weight of each variable: the logarithm of its domain
 */
export function eliminationTree(
  variables: readonly number[],
  scopes: readonly Scope[],
  weight: Float64Array,
): EliminationTree {
  const places = Math.max(1, variables.length * scopes.length);
  const tries = Math.max(LEAST_TRIES, Math.min(MOST_TRIES, Math.floor(TRIED_PLACES / places)));
  let best: Placement | null = null;
  for (let t = 0; t < tries && (best?.size ?? Infinity) > SMALL; t++) {
    const random = randomFrom(t);
    const placing = new Placing({ variables, scopes, weight }, () => 0.1 * (t % 10) * random());
    const placement = placing.place(best?.size ?? Infinity);
    if (placement && placement.size < (best?.size ?? Infinity)) best = placement;
  }
  return (best as Placement).tree;
}
