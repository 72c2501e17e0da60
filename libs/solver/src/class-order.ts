import type { Constraint } from './constraint.js';

/** `replaces[a * n + b]` is 1 where class b of a position may stand in for class a, whatever the classes of the others are. */
export type ClassOrder = Uint8Array;

const orders = new WeakMap<Constraint, (ClassOrder | null)[]>();

/** Of inequalities that hold exactly where the constraint is met: a class that weighs no more in any of them may stand in. */
function byWeights(constraint: Constraint, position: number): ClassOrder | null {
  const inequalities = constraint.wholeInequalities;
  if (!inequalities) return null;
  const columns = inequalities.map((i) => i.weights[position] as Float64Array);
  const n = columns[0]?.length ?? 0;
  const order = new Uint8Array(n * n);
  for (let a = 0; a < n; a++)
    for (let b = 0; b < n; b++)
      if (columns.every((w) => (w[b] as number) <= (w[a] as number))) order[a * n + b] = 1;
  return order;
}

/** Which classes of a position may stand in for which; null where the constraint does not tell. */
export function classOrder(constraint: Constraint, position: number): ClassOrder | null {
  let known = orders.get(constraint);
  if (!known) orders.set(constraint, (known = []));
  return (known[position] ??= constraint.orderOf?.(position) ?? byWeights(constraint, position));
}
