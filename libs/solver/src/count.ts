import { openComponents } from './components.js';
import type { Core } from './core.js';
import type { QueryOptions } from './answers.js';
import type { Ticker } from './meter.js';
import { forEachGroup } from './layout.js';
import type { Allowed } from './question.js';
import { allowChoices, enter } from './question.js';

/** Counts by branching, splitting at every node into components whose counts multiply. */
class Counter {
  /** `multiplicity[x][g]`: allowed values in a group. */
  private readonly multiplicity: readonly number[][];

  constructor(
    private readonly core: Core,
    allowed: Allowed,
    private readonly meter: Ticker,
  ) {
    this.multiplicity = core.layout.members.map((members, x) =>
      members.map((list) => list.reduce((n, v) => n + (allowed[x] ? (allowed[x][v] as number) : 1), 0)),
    );
  }

  /** Solutions over some variables under a propagated state. */
  count(state: Uint32Array, variables: ReadonlySet<number>): bigint {
    const { network } = this.core;
    network.state = state;
    const components = openComponents(network).filter((c) => variables.has(c[0] as number));
    const joined = new Set(components.flatMap((c) => [...c]));
    let product = 1n;
    for (const x of variables) if (!joined.has(x)) product *= this.values(state, x);
    for (const component of components) {
      product *= this.branch(state, component);
      if (product === 0n) return 0n;
    }
    return product;
  }

  private values(state: Uint32Array, variable: number): bigint {
    let sum = 0;
    forEachGroup(this.core.layout, { state, variable }, (g) => {
      sum += this.multiplicity[variable]?.[g] as number;
    });
    return BigInt(sum);
  }

  private branch(state: Uint32Array, component: Int32Array): bigint {
    const { network, layout } = this.core;
    this.meter.tick();
    const live = (x: number): number => layout.viewsOf[x]?.length ?? 0;
    const variable = component.reduce((best, x) => (live(x) > live(best) ? x : best));
    const rest = new Set(component);
    let sum = 0n;
    forEachGroup(layout, { state, variable }, (group) => {
      const trial = Uint32Array.from(state);
      network.state = trial;
      network.fix(variable, group);
      if (network.run()) sum += this.count(trial, rest);
    });
    return sum;
  }
}

/** Number of solutions that keep every choice. */
export function count(core: Core, options: QueryOptions, meter: Ticker): bigint {
  const allowed = allowChoices(core, options.choices ?? []);
  const state = enter(core, allowed);
  if (!state) return 0n;
  return new Counter(core, allowed, meter).count(state, new Set(core.layout.size.keys()));
}
