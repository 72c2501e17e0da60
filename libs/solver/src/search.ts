import { lowestBit } from './bits.js';
import { domainSize, openComponents } from './components.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';

export interface SearchOptions {
  /** Groups to avoid where others are left (words laid out as domains). */
  readonly avoid?: Uint32Array;
  /** Group of each variable to try first otherwise. */
  readonly hint?: Int32Array;
}

/** Lowest group of a domain, without those in `except` if given; −1 where there is none. */
export function firstGroup(network: Network, variable: number, except?: Uint32Array): number {
  const { layout, state } = network;
  const start = layout.domain[variable] as number;
  const end = layout.domain[variable + 1] as number;
  for (let w = start; w < end; w++) {
    const word = except ? (state[w] as number) & ~(except[w] as number) : (state[w] as number);
    if (word !== 0) return ((w - start) << 5) + lowestBit(word);
  }
  return -1;
}

export function hasGroup(network: Network, variable: number, group: number): boolean {
  const at = (network.layout.domain[variable] as number) + (group >>> 5);
  return (((network.state[at] as number) >>> (group & 31)) & 1) === 1;
}

/** Depth-first search with propagation at every node; smallest domains with most failures first. */
export class Search {
  private readonly pool: Uint32Array[] = [];
  private options: SearchOptions = {};

  constructor(
    readonly network: Network,
    private readonly meter: Ticker,
  ) {}

  /**
   * Finds a group for every variable under a propagated state, component by component.
   * @returns null where there is none
   */
  solve(state: Uint32Array, options: SearchOptions = {}): Int32Array | null {
    this.network.state = state;
    const solution = this.firstGroups(options);
    for (const component of openComponents(this.network)) {
      this.network.state = state;
      if (!this.solveComponent({ state, variables: component, solution }, options)) return null;
    }
    return solution;
  }

  /** Writes groups for the variables of one component into `solution`. @returns false where there are none */
  solveComponent(
    part: { state: Uint32Array; variables: Int32Array; solution: Int32Array },
    options: SearchOptions = {},
  ): boolean {
    this.options = options;
    const found = this.descend(part.state, part.variables, 0);
    if (!found) return false;
    this.network.state = found;
    for (const x of part.variables) part.solution[x] = firstGroup(this.network, x);
    return true;
  }

  private firstGroups({ avoid, hint }: SearchOptions): Int32Array {
    const { network } = this;
    return Int32Array.from({ length: network.layout.variables }, (_, x) => {
      const fresh = avoid ? firstGroup(network, x, avoid) : -1;
      if (fresh >= 0) return fresh;
      const hinted = hint?.[x];
      return hinted !== undefined && hasGroup(network, x, hinted) ? hinted : firstGroup(network, x);
    });
  }

  /** @returns a state in which all the variables are fixed, or null */
  private descend(state: Uint32Array, variables: Int32Array, depth: number): Uint32Array | null {
    const { network } = this;
    network.state = state;
    const variable = this.pick(variables);
    if (variable < 0) return state;
    this.meter.tick();
    const open = this.level(2 * depth);
    const trial = this.level(2 * depth + 1);
    open.set(state);
    for (;;) {
      network.state = open;
      const group = this.choose(variable);
      if (group < 0) return null;
      trial.set(open);
      network.state = trial;
      network.fix(variable, group);
      if (network.run()) {
        const found = this.descend(trial, variables, depth + 1);
        if (found) return found;
      }
      network.state = open;
      network.drop(variable, group);
      if (!network.run()) return null;
    }
  }

  private level(index: number): Uint32Array {
    return (this.pool[index] ??= new Uint32Array(this.network.layout.words));
  }

  private pick(variables: Int32Array): number {
    const { network } = this;
    let best = -1;
    let bestScore = Infinity;
    for (const x of variables) {
      const size = domainSize(network, x);
      if (size < 2) continue;
      const score = size / (network.failures[x] as number);
      if (score < bestScore) {
        bestScore = score;
        best = x;
      }
    }
    return best;
  }

  private choose(variable: number): number {
    const { avoid, hint } = this.options;
    const fresh = avoid ? firstGroup(this.network, variable, avoid) : -1;
    if (fresh >= 0) return fresh;
    const hinted = hint?.[variable];
    return hinted !== undefined && hasGroup(this.network, variable, hinted)
      ? hinted
      : firstGroup(this.network, variable);
  }
}
