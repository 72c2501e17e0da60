import { lowestBit } from './bits.js';
import { openComponents } from './components.js';
import type { Network } from './network.js';
import { firstGroup, Search } from './search.js';
import type { Ticker } from './meter.js';

/** Groups shown to be part of a solution: each solution shows its own and those one step away from it. */
export class Witnesses {
  /** Words laid out as domains. */
  readonly shown: Uint32Array;
  private readonly flips: Uint32Array;

  constructor(private readonly network: Network) {
    this.shown = new Uint32Array(network.layout.domain[network.layout.variables] as number);
    this.flips = new Uint32Array(network.layout.words);
  }

  /**
   * Marks a solution, and every group of `state` that may replace one of its groups alone.
   * @returns whether that showed anything new
   */
  mark(solution: Int32Array, state: Uint32Array): boolean {
    const { network, flips, shown } = this;
    const { layout } = network;
    flips.fill(0xffffffff);
    network.state = state;
    for (const [index, constraint] of network.constraints.entries())
      if (!network.isSettled(index)) constraint.keepFlips(network, solution, flips);
    let isNew = false;
    for (let x = 0; x < layout.variables; x++) {
      const start = layout.domain[x] as number;
      const end = layout.domain[x + 1] as number;
      const own = solution[x] as number;
      for (let w = start; w < end; w++) {
        let word = (state[w] as number) & (flips[w] as number) & ~(shown[w] as number);
        for (; word !== 0; word &= word - 1) {
          const bit = lowestBit(word);
          const group = ((w - start) << 5) + bit;
          if (group !== own && !this.mayFlip(x, group)) continue;
          shown[w] = (shown[w] as number) | (1 << bit);
          isNew = true;
        }
      }
    }
    return isNew;
  }

  /** Whether every group of a variable in `state` is shown. */
  covers(variable: number, state: Uint32Array): boolean {
    const { domain } = this.network.layout;
    for (let w = domain[variable] as number; w < (domain[variable + 1] as number); w++)
      if (((state[w] as number) & ~(this.shown[w] as number)) !== 0) return false;
    return true;
  }

  private mayFlip(variable: number, group: number): boolean {
    const { layout } = this.network;
    for (const id of layout.viewsOf[variable] as Int32Array) {
      const { offset, classOf, isDomain } = this.network.view(id);
      if (isDomain) continue;
      const c = classOf[group] as number;
      if ((((this.flips[offset + (c >>> 5)] as number) >>> (c & 31)) & 1) === 0) return false;
    }
    return true;
  }
}

/** Recent solutions (group of each variable), to start the next query from. */
export class SolutionPool {
  private readonly solutions: Int32Array[] = [];
  constructor(private readonly most = 200) {}

  add(solution: Int32Array): void {
    this.solutions.push(solution);
    if (this.solutions.length > this.most) this.solutions.shift();
  }

  /** Solutions that lie within a state, latest first. */
  within(network: Network, state: Uint32Array): Int32Array[] {
    const { domain, variables } = network.layout;
    const found: Int32Array[] = [];
    for (let i = this.solutions.length - 1; i >= 0; i--) {
      const solution = this.solutions[i] as Int32Array;
      let inside = true;
      for (let x = 0; x < variables && inside; x++) {
        const g = solution[x] as number;
        inside = (((state[(domain[x] as number) + (g >>> 5)] as number) >>> (g & 31)) & 1) === 1;
      }
      if (inside) found.push(solution);
    }
    return found;
  }
}

/** Known solutions that show nothing new, one after another, before the rest are passed over. */
const MOST_IDLE = 8;

export interface NarrowedState {
  /** Domains without the groups shown to be invalid. */
  readonly state: Uint32Array;
  readonly witnesses: Witnesses;
}

/**
 * Takes out of a propagated state every group that is part of no solution.
 * `watch` is told how far it is; the state it is given holds the groups not yet refuted.
 * @returns null where there is no solution at all
 */
export function narrowState(
  task: { network: Network; state: Uint32Array; pool: SolutionPool; variables?: Iterable<number> },
  meter: Ticker,
  watch: (progress: NarrowedState) => void,
): NarrowedState | null {
  const { network, pool } = task;
  const state = Uint32Array.from(task.state);
  const witnesses = new Witnesses(network);
  const search = new Search(network, meter);
  const known = pool.within(network, state);
  const variables = [...(task.variables ?? network.layout.size.keys())];
  let idle = 0;
  for (const solution of known) {
    if (idle === MOST_IDLE || variables.every((x) => witnesses.covers(x, state))) break;
    idle = witnesses.mark(solution, state) ? 0 : idle + 1;
  }
  const first = known[0] ?? search.solve(state);
  if (!first) return null;
  let last: Int32Array = first;
  if (known.length === 0) {
    pool.add(last);
    witnesses.mark(last, state);
  }
  const wanted = task.variables ? new Set(task.variables) : null;
  network.state = state;
  const trial = new Uint32Array(state.length);
  for (const component of openComponents(network))
    for (const x of component) {
      if (wanted && !wanted.has(x)) continue;
      for (;;) {
        network.state = state;
        const group = firstGroup(network, x, witnesses.shown);
        if (group < 0) break;
        watch({ state, witnesses });
        meter.tick();
        trial.set(state);
        network.state = trial;
        network.fix(x, group);
        const solution = Int32Array.from(last);
        const part = { state: trial, variables: component, solution };
        const options = { avoid: witnesses.shown, hint: last };
        if (network.run() && search.solveComponent(part, options)) {
          last = solution;
          pool.add(solution);
          witnesses.mark(solution, state);
        } else {
          network.state = state;
          network.drop(x, group);
          network.run();
        }
      }
    }
  return { state, witnesses };
}
