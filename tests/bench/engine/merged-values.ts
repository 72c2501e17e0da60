import type { ConstraintSpec, Problem } from '@flangewise/solver';

/** Values of a variable that no constraint tells apart. */
export interface MergedValues {
  readonly groupOf: Uint16Array;
  readonly members: readonly (readonly number[])[];
  /** The cheapest value of each group. */
  readonly cheapest: readonly number[];
}

/** What a constraint sees of each value of a variable. */
function keysOf(spec: ConstraintSpec, x: number): ArrayLike<number | string>[] {
  const classes = ({ scope, classOf }: { scope: readonly number[]; classOf?: readonly Uint16Array[] }) => {
    const position = scope.indexOf(x);
    if (position < 0) return [];
    const own = classOf?.[position];
    if (!own) throw new Error('the generator gives classes everywhere');
    return [own];
  };
  switch (spec.kind) {
    case 'table':
      return classes(spec);
    case 'comparison':
      return [...classes(spec.demand), ...classes(spec.limit)];
    case 'sum': {
      const terms = spec.terms.filter((t) => t.variable === x).map((t) => t.weights);
      return 'variable' in spec.limit && spec.limit.variable === x ? [...terms, spec.limit.values] : terms;
    }
    case 'ports': {
      const lists = [
        ...(spec.host === x ? [spec.hostPorts] : []),
        ...spec.users.filter((u) => u.variable === x).map((u) => u.needs),
      ];
      return lists.map((list) => list.map((sizes) => [...sizes].join('+')));
    }
  }
}

export function mergeValues({ variables, constraints }: Problem): MergedValues[] {
  return variables.map(({ size, cost }, x) => {
    const keys = constraints.flatMap((spec) => keysOf(spec, x));
    const numberOf = new Map<string, number>();
    const members: number[][] = [];
    const groupOf = Uint16Array.from({ length: size }, (_, v) => {
      const key = keys.map((list) => list[v]).join();
      const known = numberOf.get(key) ?? numberOf.size;
      numberOf.set(key, known);
      (members[known] ??= []).push(v);
      return known;
    });
    const costOf = (v: number): number => cost?.[v] ?? 0;
    const cheapest = members.map((list) => list.reduce((a, b) => (costOf(b) < costOf(a) ? b : a)));
    return { groupOf, members, cheapest };
  });
}
