import type { Core } from './core.js';
import type { Allowed } from './question.js';

/** What each group costs: the cost of its cheapest allowed value, and that value. */
export interface GroupCosts {
  /** `cost[x][g]`; Infinity where no value of the group is allowed. */
  readonly cost: readonly Float64Array[];
  readonly cheapest: readonly Int32Array[];
}

export const priceList = (core: Core): (Int32Array | null)[] =>
  core.problem.variables.map((v) => v.cost ?? null);

/** Costs of groups under the allowed values; equal costs: the shorter delay, then the lower value. */
export function groupCosts(core: Core, allowed: Allowed): GroupCosts {
  const prices = priceList(core);
  const cost: Float64Array[] = [];
  const cheapest: Int32Array[] = [];
  for (const [x, members] of core.layout.members.entries()) {
    const flags = allowed[x];
    const price = prices[x];
    const delay = core.problem.variables[x]?.delay;
    const costs = new Float64Array(members.length).fill(Infinity);
    const values = new Int32Array(members.length).fill(-1);
    for (const [g, list] of members.entries())
      for (const v of list) {
        if (flags && flags[v] !== 1) continue;
        const c = price?.[v] ?? 0;
        const best = values[g] as number;
        const isBetter =
          best < 0 ||
          c < (costs[g] as number) ||
          (c === costs[g] && (delay?.[v] ?? 0) < (delay?.[best] ?? 0));
        if (!isBetter) continue;
        costs[g] = c;
        values[g] = v;
      }
    cost.push(costs);
    cheapest.push(values);
  }
  return { cost, cheapest };
}

/** The cheapest allowed values of a solution in groups. */
export const valuesOf = (costs: GroupCosts, groups: Int32Array): Int32Array =>
  groups.map((g, x) => costs.cheapest[x]?.[g] as number);
