import { domainSize } from './components.js';
import type { Constraint } from './constraint.js';
import type { Network } from './network.js';

const forests = new WeakMap<Network, Forest>();

/**
 * Finds what keeps the open constraints of a state from being a forest. In a forest, where no two constraints are joined by more than one
 * way, propagation is exact: every group left is part of a solution (Freuder 1982, Berge-acyclic networks).
 */
export class Forest {
  private readonly size: Int32Array;
  /** Constraints not yet peeled off that see a variable; open variables not yet peeled off that a constraint sees. */
  private readonly degree: Int32Array;
  private readonly arity: Int32Array;
  /** Variables that have to be fixed, because propagation of one of their constraints is not exact. */
  private readonly isBound: Uint8Array;
  private readonly variablesOf: readonly Int32Array[];
  private readonly constraintsOf: readonly Int32Array[];
  private readonly leaves: Int32Array;

  /** The forest of a network, made once. */
  static of(network: Network): Forest {
    let known = forests.get(network);
    if (!known) forests.set(network, (known = new Forest(network)));
    return known;
  }

  private constructor(private readonly network: Network) {
    const { layout, constraints } = network;
    this.size = new Int32Array(layout.variables);
    this.degree = new Int32Array(layout.variables);
    this.isBound = new Uint8Array(layout.variables);
    this.arity = new Int32Array(constraints.length);
    this.variablesOf = constraints.map((c) =>
      Int32Array.from(new Set(Array.from(c.views, (id) => network.view(id).variable))),
    );
    const of: number[][] = Array.from(layout.size, () => []);
    for (const [c, variables] of this.variablesOf.entries()) for (const x of variables) of[x]?.push(c);
    this.constraintsOf = of.map((list) => Int32Array.from(list));
    this.leaves = new Int32Array(layout.variables + constraints.length);
  }

  /** The variable among some that is to be fixed next: in a cycle, of few groups, many failures and many constraints; −1 where all is a forest. */
  knot(among: readonly number[]): number {
    this.count();
    this.peel();
    const { failures } = this.network;
    let best = -1;
    let bestScore = Infinity;
    for (const x of among) {
      const size = this.size[x] as number;
      const degree = this.degree[x] as number;
      if (size < 2 || (degree === 0 && this.isBound[x] === 0)) continue;
      const score = size / ((failures[x] as number) * (1 + degree));
      if (score >= bestScore) continue;
      bestScore = score;
      best = x;
    }
    return best;
  }

  /** The variables among some that share no constraint with a variable. */
  farFrom(variable: number, among: readonly number[]): number[] {
    const near = new Set([variable]);
    for (const c of this.constraintsOf[variable] as Int32Array)
      if (!this.network.isSettled(c)) for (const x of this.variablesOf[c] as Int32Array) near.add(x);
    return among.filter((x) => !near.has(x));
  }

  private count(): void {
    const { network, size, degree, arity, isBound } = this;
    const { constraints, active } = network;
    degree.fill(0);
    isBound.fill(0);
    for (let x = 0; x < size.length; x++) size[x] = domainSize(network, x);
    for (let c = 0; c < constraints.length; c++) {
      arity[c] = 0;
      if (active[c] === 0 || network.isSettled(c)) continue;
      const variables = this.variablesOf[c] as Int32Array;
      let open = 0;
      for (const x of variables) if ((size[x] as number) > 1) open++;
      if (open === 0) continue;
      const isExact = (constraints[c] as Constraint).isExact(network);
      if (open === 1 && isExact) continue;
      arity[c] = open;
      for (const x of variables) {
        if ((size[x] as number) < 2) continue;
        degree[x] = (degree[x] as number) + 1;
        if (!isExact) isBound[x] = 1;
      }
    }
  }

  /** Takes away, again and again, what hangs on by one end. */
  private peel(): void {
    const { degree, arity, leaves } = this;
    const variables = degree.length;
    let count = 0;
    for (let x = 0; x < variables; x++) if (degree[x] === 1) leaves[count++] = x;
    while (count > 0) {
      const leaf = leaves[--count] as number;
      const isVariable = leaf < variables;
      const own = isVariable ? degree : arity;
      const others = isVariable ? arity : degree;
      const at = isVariable ? leaf : leaf - variables;
      own[at] = 0;
      const around = (isVariable ? this.constraintsOf[at] : this.variablesOf[at]) as Int32Array;
      for (const other of around) {
        if ((others[other] as number) === 0) continue;
        others[other] = (others[other] as number) - 1;
        if (others[other] === 1) leaves[count++] = isVariable ? variables + other : other;
      }
    }
  }
}
