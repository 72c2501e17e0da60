import type {
  ComparisonSpec,
  ConstraintSpec,
  PortsSpec,
  Problem,
  SumSpec,
  TableSpec,
} from '@flangewise/solver';
import { type MergedValues, mergeValues } from './merged-values.js';

/** Weights of Booleans that are true add up to `most` or less; all whole and not negative. */
export interface Linear {
  readonly literals: readonly number[];
  readonly weights: readonly number[];
  readonly most: number;
}

/** A problem over Booleans 1 … count: clauses (a negative number is a negation), and sums. */
export interface BooleanEncoding {
  readonly count: number;
  readonly clauses: readonly (readonly number[])[];
  readonly sums: readonly Linear[];
  /** Boolean of each group of each variable. */
  readonly chosen: readonly (readonly number[])[];
  readonly merged: readonly MergedValues[];
  readonly costs: readonly (readonly number[])[];
}

/** Decimals of the sums: one place. */
const SCALE = 10;

function whole(x: number): number {
  const scaled = Math.round(x * SCALE);
  if (Math.abs(scaled - x * SCALE) > 1e-6) throw new Error(`${String(x)} has more than one decimal place`);
  return scaled;
}

const MOST_PAIRS = 6;

/**
 * The Boolean form that a SAT or SMT solver gets: merged values, a Boolean for each class that a constraint sees, tables as
 * reduced decision diagrams, sums as sums.
 */
class Encoder {
  count = 0;
  readonly clauses: number[][] = [];
  readonly sums: Linear[] = [];
  readonly merged: MergedValues[];
  readonly chosen: number[][];
  private readonly views = new Map<string, number[]>();

  constructor(problem: Problem) {
    this.merged = mergeValues(problem);
    this.chosen = this.merged.map(({ members }) => members.map(() => ++this.count));
    for (const list of this.chosen) {
      this.clauses.push(list);
      this.atMostOne(list);
    }
    for (const spec of problem.constraints) this.add(spec);
  }

  private add(spec: ConstraintSpec): void {
    switch (spec.kind) {
      case 'table':
        return this.addTable(spec);
      case 'comparison':
        return this.addComparison(spec);
      case 'sum':
        return this.addSum(spec);
      case 'ports':
        return this.addPorts(spec);
    }
  }

  /** In pairs, or along a chain of Booleans that say "one of those before". */
  private atMostOne(list: readonly number[]): void {
    if (list.length <= MOST_PAIRS) {
      for (const [i, a] of list.entries()) for (const b of list.slice(i + 1)) this.clauses.push([-a, -b]);
      return;
    }
    let before = ++this.count;
    this.clauses.push([-(list[0] as number), before]);
    for (const [i, literal] of list.entries()) {
      if (i === 0) continue;
      this.clauses.push([-literal, -before]);
      if (i === list.length - 1) continue;
      const next = ++this.count;
      this.clauses.push([-before, next], [-literal, next]);
      before = next;
    }
  }

  /** A Boolean for each class of a variable's values. */
  private classes(x: number, classOf: Uint16Array, classCount: number): number[] {
    const groups = this.merged[x] as MergedValues;
    const own = groups.cheapest.map((v) => classOf[v] as number);
    const key = `${String(x)}:${own.join()}`;
    const known = this.views.get(key);
    if (known) return known;
    const booleans = Array.from({ length: classCount }, () => ++this.count);
    const members: number[][] = booleans.map(() => []);
    for (const [g, c] of own.entries()) {
      const literal = this.chosen[x]?.[g] as number;
      this.clauses.push([-literal, booleans[c] as number]);
      members[c]?.push(literal);
    }
    for (const [c, list] of members.entries()) this.clauses.push([-(booleans[c] as number), ...list]);
    this.views.set(key, booleans);
    return booleans;
  }

  private addTable(spec: TableSpec): void {
    const views = spec.scope.map((x, i) =>
      this.classes(x, spec.classOf?.[i] as Uint16Array, spec.classCount?.[i] as number),
    );
    this.addDiagram(views, Int32Array.from(spec.allowed));
  }

  private addComparison({ demand, limit }: ComparisonSpec): void {
    const views = [demand, limit].flatMap((side) =>
      side.scope.map((x, i) =>
        this.classes(x, side.classOf?.[i] as Uint16Array, side.classCount?.[i] as number),
      ),
    );
    const cells = new Int32Array(demand.values.length * limit.values.length);
    let at = 0;
    for (const d of demand.values) for (const l of limit.values) cells[at++] = d <= l ? 1 : 0;
    this.addDiagram(views, cells);
  }

  /** A Boolean for each node of the reduced diagram of row-major cells; from each node the classes lead on, or nowhere. */
  private addDiagram(views: readonly (readonly number[])[], cells: Int32Array): void {
    let nodes: Int32Array = cells.map((c) => (c === 1 ? 1 : 0));
    // From the last position up: nodes are numbered from 1, 0 leads nowhere; after the last position all is well.
    let below: readonly number[] | null = null;
    for (const [p, view] of [...views.entries()].reverse()) {
      const numberOf = new Map<string, number>();
      const booleans: number[] = [];
      const rows = new Int32Array(nodes.length / view.length);
      for (let r = 0; r < rows.length; r++) {
        const row = nodes.subarray(r * view.length, (r + 1) * view.length);
        if (row.every((n) => n === 0)) continue;
        const key = row.join();
        const known = numberOf.get(key);
        if (known !== undefined) {
          rows[r] = known;
          continue;
        }
        // The root needs no Boolean.
        const node = p === 0 ? null : ++this.count;
        const when = node === null ? [] : [-node];
        booleans.push(node ?? 0);
        this.clauses.push([...when, ...view.filter((_, c) => row[c] !== 0)]);
        for (const [c, literal] of view.entries())
          if (below && row[c] !== 0)
            this.clauses.push([...when, -literal, below[(row[c] as number) - 1] as number]);
        numberOf.set(key, booleans.length);
        rows[r] = booleans.length;
      }
      if (booleans.length === 0) this.clauses.push([]);
      nodes = rows;
      below = booleans;
    }
  }

  private addSum({ terms, limit }: SumSpec): void {
    const own = terms.map(({ variable, weights }) => ({ variable, weights: Array.from(weights, whole) }));
    if ('constant' in limit) this.addLinear(own, { most: whole(limit.constant) });
    else this.addLinear(own, { variable: limit.variable, values: Array.from(limit.values, whole) });
  }

  /** For each size: as many ports of that size or more as are needed (a port takes every smaller size). */
  private addPorts({ host, hostPorts, users }: PortsSpec): void {
    const sizes = new Set(users.flatMap((u) => u.needs.flatMap((list) => [...list])));
    for (const size of sizes) {
      const count = (list: Float64Array): number => list.filter((s) => s >= size).length;
      this.addLinear(
        users.map(({ variable, needs }) => ({ variable, weights: needs.map(count) })),
        { variable: host, values: hostPorts.map(count) },
      );
    }
  }

  /** What the values of some variables add up to stays within a limit, which the values of a variable may set. */
  private addLinear(
    terms: readonly { readonly variable: number; readonly weights: readonly number[] }[],
    limit: { readonly variable: number; readonly values: readonly number[] } | { readonly most: number },
  ): void {
    // A tighter limit weighs as much as it is below the widest.
    const most = 'most' in limit ? limit.most : Math.max(...limit.values);
    const setter = 'most' in limit ? [] : [{ ...limit, weights: limit.values.map((l) => most - l) }];
    const literals: number[] = [];
    const weights: number[] = [];
    for (const { variable, weights: own } of [...terms, ...setter])
      for (const [g, v] of this.merged[variable]?.cheapest.entries() ?? []) {
        if (own[v] === 0) continue;
        literals.push(this.chosen[variable]?.[g] as number);
        weights.push(own[v] as number);
      }
    this.sums.push({ literals, weights, most });
  }
}

export function encode(problem: Problem): BooleanEncoding {
  const { count, clauses, sums, chosen, merged } = new Encoder(problem);
  const costs = problem.variables.map(({ cost }, x) => merged[x]?.cheapest.map((v) => cost?.[v] ?? 0) ?? []);
  return { count, clauses, sums, chosen, merged, costs };
}
