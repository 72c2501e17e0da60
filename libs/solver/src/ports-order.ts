import type { ClassOrder } from './class-order.js';
import { certainPorts, type HostPorts, openPorts } from './host-ports.js';
import { type Counts, isWithin } from './port-sets.js';

const orderOf = (count: number, mayReplace: (a: number, b: number) => boolean): ClassOrder => {
  const order = new Uint8Array(count * count);
  for (let a = 0; a < count; a++)
    for (let b = 0; b < count; b++) if (a === b || mayReplace(a, b)) order[a * count + b] = 1;
  return order;
};

/** A class of a user or an obstacle may stand in for another that needs as much or more and leaves as little or less. */
export const orderOfPlaces = (
  rows: readonly Counts[],
  hosts: readonly HostPorts[],
  obstacle: number,
): ClassOrder => {
  const levels = hosts.flatMap(({ contested }) => contested.flatMap((port) => port.levels[obstacle] ?? []));
  return orderOf(
    rows.length,
    (a, b) =>
      isWithin(rows[b] as Counts, rows[a] as Counts) &&
      levels.every((by) => (by[b] as number) >= (by[a] as number)),
  );
};

/** A host may stand in for another that has as few ports or fewer, whatever stands behind them. */
export const orderOfHosts = (hosts: readonly HostPorts[]): ClassOrder => {
  const certain = hosts.map(certainPorts);
  const open = hosts.map(openPorts);
  return orderOf(hosts.length, (a, b) => isWithin(open[a] as Counts, certain[b] as Counts));
};
