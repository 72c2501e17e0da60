import type { Place } from './answers.js';
import type { BoxPool } from './box-pool.js';
import type { Core } from './core.js';
import type { Ticker } from './meter.js';
import type { NarrowedState } from './narrow-state.js';
import { narrowState } from './narrow-state.js';
import type { Allowed } from './question.js';
import { hasGroup, Search } from './search.js';

interface ApartTask {
  readonly core: Core;
  readonly allowed: Allowed;
  readonly narrowed: NarrowedState;
  readonly boxes: BoxPool;
  readonly most: number;
}

/** A group of a variable. */
interface Part {
  readonly variable: number;
  readonly group: number;
}

/** Groups of a variable in a state. */
function groupsIn({ network, layout }: Core, state: Uint32Array, x: number): number[] {
  network.state = state;
  return [...(layout.members[x] ?? []).keys()].filter((g) => hasGroup(network, x, g));
}

/** The valid state with some groups fixed and, of the constraints, only those given; null where that fails. */
function fixed(
  { core: { network }, narrowed }: ApartTask,
  parts: readonly Part[],
  constraint?: number,
): Uint32Array | null {
  network.state = Uint32Array.from(narrowed.state);
  const all = network.active;
  if (constraint !== undefined) {
    network.active = new Uint8Array(all.length);
    network.active[constraint] = 1;
  }
  for (const { variable, group } of parts) network.fix(variable, group);
  const consistent = network.run();
  network.active = all;
  return consistent ? network.state : null;
}

/** Whether one constraint alone keeps two groups apart, whatever valid groups the others take. */
function keepsApart(
  task: ApartTask,
  pair: readonly [Part, Part],
  meter: Ticker,
): (constraint: number) => boolean {
  const { network } = task.core;
  return (constraint) => {
    const state = fixed(task, pair, constraint);
    if (state === null) return true;
    const all = network.active;
    network.active = new Uint8Array(all.length);
    network.active[constraint] = 1;
    try {
      return new Search(network, meter).solve(state) === null;
    } finally {
      network.active = all;
    }
  };
}

/**
 * Pairs of valid values of which no solution has both, though no constraint alone keeps them apart: combinations that look possible
 * and are not.
 */
export function findApart(
  task: ApartTask,
  meter: Ticker,
): { apart: (readonly [Place, Place])[]; complete: boolean } {
  const { core, allowed, narrowed, boxes, most } = task;
  const { network, layout } = core;
  const apart: (readonly [Place, Place])[] = [];
  if (most === 0) return { apart, complete: false };
  const variablesOf = core.constraints.map(
    (c) => new Set(Array.from(c.views, (v) => network.view(v).variable)),
  );
  const places = ({ variable, group }: Part): Place[] =>
    Array.from(layout.members[variable]?.[group] ?? [])
      .filter((value) => allowed[variable]?.[value] !== 0)
      .map((value) => ({ variable, value }));
  for (let x = 0; x < layout.variables; x++) {
    const own = groupsIn(core, narrowed.state, x);
    if (own.length < 2) continue;
    for (const group of own) {
      meter.tick();
      const part = { variable: x, group };
      const state = fixed(task, [part]);
      const left =
        state && narrowState({ network, state, boxes, diagrams: core.diagrams }, meter, () => undefined);
      for (let y = x + 1; y < layout.variables; y++) {
        const kept = new Set(left ? groupsIn(core, left.state, y) : []);
        const shared = [...variablesOf.keys()].filter(
          (c) => variablesOf[c]?.has(x) && variablesOf[c]?.has(y),
        );
        for (const gone of groupsIn(core, narrowed.state, y).filter((g) => !kept.has(g))) {
          const other = { variable: y, group: gone };
          if (shared.some(keepsApart(task, [part, other], meter))) continue;
          for (const a of places(part))
            for (const b of places(other)) {
              if (apart.length >= most) return { apart, complete: false };
              apart.push([a, b]);
            }
        }
      }
    }
  }
  return { apart, complete: true };
}
