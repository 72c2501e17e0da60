import type { Choice } from './answers.js';
import type { Core } from './core.js';
import { propagatedRoot } from './core.js';
import type { Ticker } from './meter.js';
import type { Trace } from './network.js';
import { allowChoices, restrict } from './question.js';
import { Search } from './search.js';
import type { SolutionPool } from './solution-pool.js';

/** What of a contradiction took part in it; the rest can be left out. */
export interface Cause {
  readonly choices: Choice[];
  /** Numbers of constraints. */
  readonly constraints: number[];
}

/** Whether some choices and some constraints have a solution together: propagation first, then known solutions, then search. */
export class Consistency {
  private readonly search: Search;

  constructor(
    private readonly core: Core,
    private readonly pool: SolutionPool,
    meter: Ticker,
  ) {
    this.search = new Search(core.network, meter);
  }

  check(choices: readonly Choice[], constraints?: readonly number[]): boolean {
    const { network } = this.core;
    const all = network.active;
    if (constraints) network.active = this.mask(constraints);
    try {
      const state = this.enter(choices, constraints === undefined);
      if (!state) return false;
      if (this.pool.within(network, state).length > 0) return true;
      const solution = this.search.solve(state);
      if (solution && !constraints) this.pool.add(solution);
      return solution !== null;
    } finally {
      network.active = all;
    }
  }

  /**
   * Where propagation alone refutes the choices: the choices and constraints on the way to the contradiction, found by
   * going back through the changes. Null where propagation does not refute them.
   */
  cause(choices: readonly Choice[]): Cause | null {
    const { core } = this;
    const { network } = core;
    const trace: Trace = { variables: [], constraints: [], failed: -1, failedVariable: -1 };
    network.trace = trace;
    const consistent = this.enter(choices, false) !== null;
    network.trace = null;
    if (consistent) return null;
    const needed = new Set<number>();
    const used = new Set<number>();
    if (trace.failed >= 0) {
      const failed = core.constraints[trace.failed];
      used.add(trace.failed);
      for (const position of failed?.explain(network) ?? [])
        needed.add(network.view(failed?.views[position] as number).variable);
    } else if (trace.failedVariable >= 0) needed.add(trace.failedVariable);
    for (let event = trace.variables.length - 1; event >= 0; event--) {
      if (!needed.has(trace.variables[event] as number)) continue;
      const constraint = trace.constraints[event] as number;
      used.add(constraint);
      for (const view of core.constraints[constraint]?.views ?? []) needed.add(network.view(view).variable);
    }
    return {
      choices: choices.filter((c) => needed.has(c.variable)),
      constraints: [...used].sort((a, b) => a - b),
    };
  }

  private mask(constraints: readonly number[]): Uint8Array {
    const mask = new Uint8Array(this.core.constraints.length);
    for (const c of constraints) mask[c] = 1;
    return mask;
  }

  private enter(choices: readonly Choice[], fromRoot: boolean): Uint32Array | null {
    const { core } = this;
    const { network } = core;
    if (fromRoot) {
      if (!core.root) return null;
      network.state = Uint32Array.from(core.root);
    } else if (!propagatedRoot(network)) return null;
    return restrict(core, allowChoices(core, choices)) ? network.state : null;
  }
}
