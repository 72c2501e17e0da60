import { classOrder } from './class-order.js';
import type { ClassOrder } from './class-order.js';
import type { Network } from './network.js';
import { hasGroup } from './search.js';

/** What one constraint says of the groups of a variable. */
interface Say {
  readonly classOf: Uint16Array;
  readonly count: number;
  /** Null: only groups of one class may stand in for each other. */
  readonly order: ClassOrder | null;
}

/** Whether group b may stand in for group a in every constraint. */
const mayReplace = (says: readonly Say[], a: number, b: number): boolean =>
  says.every(({ classOf, count, order }) => {
    const [from, to] = [classOf[a] as number, classOf[b] as number];
    return from === to || (order !== null && order[from * count + to] === 1);
  });

/**
 * Drops from the network's state the groups that another may stand in for at the same cost or less, and propagates: of the
 * cheapest solutions at least one is left.
 */
export function dropDominated(network: Network, cost: readonly Float64Array[]): void {
  const says: Say[][] = Array.from(network.layout.size, () => []);
  for (const [index, constraint] of network.constraints.entries()) {
    if (network.active[index] === 0 || network.isSettled(index)) continue;
    for (const [position, id] of constraint.views.entries()) {
      const { variable, classOf, count } = network.view(id);
      says[variable]?.push({ classOf, count, order: classOrder(constraint, position) });
    }
  }
  for (const [x, own] of says.entries()) {
    const costs = cost[x] as Float64Array;
    const groups = [...costs.keys()].filter((g) => hasGroup(network, x, g));
    // Cheapest first: a group can only be replaced by one before it, or by one after it that costs the same.
    groups.sort((a, b) => (costs[a] as number) - (costs[b] as number) || a - b);
    const kept: number[] = [];
    for (const g of groups) {
      if (kept.some((b) => mayReplace(own, g, b))) network.drop(x, g);
      else kept.push(g);
    }
  }
  network.run();
}
