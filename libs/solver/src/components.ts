import { bitCount } from './bits.js';
import type { Constraint } from './constraint.js';
import type { Network } from './network.js';

/** Number of groups in a domain. */
export function domainSize(network: Network, variable: number): number {
  const { layout, state } = network;
  const end = layout.domain[variable + 1] as number;
  let count = 0;
  for (let w = layout.domain[variable] as number; w < end; w++) count += bitCount(state[w] as number);
  return count;
}

/**
 * Splits the open variables of the network's state into sets that no active, unsettled constraint joins.
 * Variables on which no such constraint bears are left out: each of their groups will do.
 * @param among only these variables; no constraint joins them with others that are open
 */
export function openComponents(network: Network, among?: Int32Array): Int32Array[] {
  const { layout, constraints, active } = network;
  const parent = Int32Array.from({ length: layout.variables }, (_, x) => x);
  const find = (x: number): number => {
    let root = x;
    while (parent[root] !== root) root = parent[root] as number;
    for (let y = x; y !== root;) {
      const next = parent[y] as number;
      parent[y] = root;
      y = next;
    }
    return root;
  };
  const open = new Uint8Array(layout.variables);
  const list = among ?? layout.size.keys();
  for (const x of list) if (domainSize(network, x) > 1) open[x] = 1;
  const bound = new Uint8Array(layout.variables);
  for (let index = 0; index < constraints.length; index++) {
    if (active[index] === 0 || network.isSettled(index)) continue;
    let first = -1;
    for (const id of (constraints[index] as Constraint).views) {
      const { variable } = network.view(id);
      if (open[variable] === 0) continue;
      bound[variable] = 1;
      if (first < 0) first = find(variable);
      else parent[find(variable)] = first;
    }
  }
  const byRoot = new Map<number, number[]>();
  for (let x = 0; x < layout.variables; x++) {
    if (bound[x] === 0) continue;
    const root = find(x);
    const list = byRoot.get(root);
    if (list) list.push(x);
    else byRoot.set(root, [x]);
  }
  return [...byRoot.values()].map((list) => Int32Array.from(list));
}
