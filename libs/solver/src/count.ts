import type { QueryOptions } from './answers.js';
import { compileDiagram } from './compile-diagram.js';
import { openComponents } from './components.js';
import type { Core } from './core.js';
import { countByDiagram } from './diagram-count.js';
import { forEachGroup } from './layout.js';
import type { Ticker } from './meter.js';
import type { Allowed } from './question.js';
import { allowChoices, enter } from './question.js';

/** Work and tuples up to which a component is compiled to be counted. */
const MOST_WORK = 1_000_000;
const MOST_TUPLES = 60_000;

/**
 * Counts component by component. A component is counted by a diagram where one is small enough; else the search branches
 * on a variable that ties it together, and goes on with what it falls into.
 */
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
      product *= this.countComponent(state, component);
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

  private countComponent(state: Uint32Array, component: Int32Array): bigint {
    const { network } = this.core;
    const among = new Set(component);
    this.meter.tick();
    const task = { network, state, among, mostWork: MOST_WORK, mostTuples: MOST_TUPLES };
    const known = compileDiagram(task, this.meter);
    network.state = state;
    const counted = known && countByDiagram({ network, known, multiplicity: this.multiplicity }, this.meter);
    return counted ?? this.branch(state, component);
  }

  private branch(state: Uint32Array, component: Int32Array): bigint {
    const { network, layout } = this.core;
    network.state = state;
    const variable = this.pick(component);
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

  /** A variable that sets a limit, or else the one that most constraints see: fixing it takes most apart. */
  private pick(component: Int32Array): number {
    const { network } = this.core;
    const inside = new Set(component);
    const seen = new Map<number, number>();
    for (const [index, { views, wholeInequalities }] of network.constraints.entries()) {
      if (network.isSettled(index)) continue;
      for (const id of views) {
        const { variable } = network.view(id);
        if (inside.has(variable)) seen.set(variable, (seen.get(variable) ?? 0) + 1);
      }
      for (const { limit } of wholeInequalities ?? []) {
        if (limit === undefined) continue;
        const { variable } = network.view(views[limit] as number);
        if (inside.has(variable)) return variable;
      }
    }
    return component.reduce((best, x) => ((seen.get(x) ?? 0) > (seen.get(best) ?? 0) ? x : best));
  }
}

/** Number of solutions that keep every choice. */
export function count(core: Core, options: QueryOptions, meter: Ticker): bigint {
  const allowed = allowChoices(core, options.choices ?? []);
  const state = enter(core, allowed);
  if (!state) return 0n;
  return new Counter(core, allowed, meter).count(state, new Set(core.layout.size.keys()));
}
