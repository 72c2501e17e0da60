import type { PortsSpec } from './problem.js';
import { roundTo12Digits } from './rounding.js';

interface Port {
  readonly size: number;
  /** The largest that reaches through it. */
  readonly through: number;
}

interface Need {
  readonly size: number;
  readonly reaches: boolean;
}

const takes = (port: Port, need: Need): boolean =>
  need.size <= port.size && (!need.reaches || need.size <= port.through);

/** The ports of the host, as what stands behind them leaves them, and those that the users offer. */
function portsOf(spec: PortsSpec, solution: Int32Array): Port[] {
  const host = solution[spec.host] as number;
  const leaves = (spec.behind?.obstacles ?? []).map(
    (o) =>
      o.leaves[o.classOf[solution[o.variable] as number] as number]?.[
        spec.behind?.hostClassOf[host] as number
      ] as Float64Array,
  );
  const own = Array.from(spec.hostPorts[host] as Float64Array, (size, p) => ({
    size: roundTo12Digits(size),
    through: roundTo12Digits(
      Math.min(spec.through?.[host]?.[p] ?? size, ...leaves.map((list) => list[p] as number)),
    ),
  }));
  const given = spec.users.flatMap(({ variable, gives }) =>
    Array.from(gives?.[solution[variable] as number] ?? [], (size) => ({
      size: roundTo12Digits(size),
      through: -Infinity,
    })),
  );
  return [...own, ...given];
}

function needsOf(spec: PortsSpec, solution: Int32Array): Need[] {
  const chosen = spec.users.flatMap(({ variable, needs, reaches }) => {
    const value = solution[variable] as number;
    return Array.from(needs[value] as Float64Array, (size) => ({
      size: roundTo12Digits(size),
      reaches: reaches?.[value] === 1,
    }));
  });
  const spare = Array.from(spec.spare ?? [], (size) => ({ size: roundTo12Digits(size), reaches: false }));
  return [...chosen, ...spare];
}

/** Whether every need finds a port of its own: a matching by augmenting paths. */
export function portsFit(spec: PortsSpec, solution: Int32Array): boolean {
  const ports = portsOf(spec, solution);
  const needs = needsOf(spec, solution);
  const holder = ports.map((): number => -1);
  const place = (n: number, seen: Set<number>): boolean => {
    for (const [p, port] of ports.entries()) {
      if (seen.has(p) || !takes(port, needs[n] as Need)) continue;
      seen.add(p);
      const held = holder[p] as number;
      if (held >= 0 && !place(held, seen)) continue;
      holder[p] = n;
      return true;
    }
    return false;
  };
  return needs.every((_, n) => place(n, new Set()));
}
