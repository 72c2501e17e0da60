import { lowestBit } from './bits.js';
import { Forest } from './forest.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import { firstGroup } from './search.js';

export interface BoxRequest {
  /** Groups shown already: others come first. */
  readonly avoid: Uint32Array;
  /** Variables of interest; the others are left as they are. */
  readonly among: readonly number[];
  /** A variable that has just been fixed: what is far from it is first sought where the last box was. */
  readonly around?: number;
}

/** Nodes spent near the last box before the search starts anew. */
const MOST_NODES_NEARBY = 40;

/**
 * Looks for boxes: states narrowed so far that every group left in them is part of a solution. Fixes only variables that lie on cycles,
 * so that one box shows many groups at once.
 */
export class BoxSearch {
  private readonly pool: Uint32Array[] = [];
  private readonly forest: Forest;
  private readonly start: Uint32Array;
  /** Domains of the last box. */
  private readonly last: Uint32Array;
  private hasLast = false;
  private avoid: Uint32Array = new Uint32Array(0);
  private among: readonly number[] = [];
  private nodesLeft = Infinity;

  constructor(
    private readonly network: Network,
    private readonly meter: Ticker,
  ) {
    this.forest = Forest.of(network);
    this.start = new Uint32Array(network.layout.words);
    this.last = new Uint32Array(network.layout.words);
  }

  /** A box within a propagated state, which may be narrowed; null where there is none. */
  find(state: Uint32Array, { avoid, among, around }: BoxRequest): Uint32Array | null {
    this.avoid = avoid;
    this.among = among;
    const found =
      (around === undefined || !this.hasLast
        ? null
        : (this.keeping(state, among) ?? this.keeping(state, this.forest.farFrom(around, among)))) ??
      this.anywhere(state);
    if (!found) return null;
    this.last.set(found);
    this.hasLast = true;
    return found;
  }

  private anywhere(state: Uint32Array): Uint32Array | null {
    this.nodesLeft = Infinity;
    return this.descend(state, 0);
  }

  /** Keeps a group of the last box in some variables, where it is still there. The state is as before where that fails. */
  private keeping(state: Uint32Array, variables: readonly number[]): Uint32Array | null {
    const { network } = this;
    this.start.set(state);
    network.state = state;
    for (const x of variables) {
      const group = this.lastGroup(x);
      if (group >= 0) network.fix(x, group);
    }
    this.nodesLeft = MOST_NODES_NEARBY;
    const found = network.run() ? this.descend(state, 0) : null;
    if (!found) state.set(this.start);
    return found;
  }

  private descend(state: Uint32Array, depth: number): Uint32Array | null {
    const { network } = this;
    network.state = state;
    const variable = this.forest.knot(this.among);
    if (variable < 0) return state;
    if (--this.nodesLeft < 0) return null;
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
        const found = this.descend(trial, depth + 1);
        if (found || this.nodesLeft < 0) return found;
      }
      network.state = open;
      network.drop(variable, group);
      if (!network.run()) return null;
    }
  }

  private choose(variable: number): number {
    const { network } = this;
    const fresh = firstGroup(network, variable, this.avoid);
    if (fresh >= 0) return fresh;
    const known = this.hasLast ? this.lastGroup(variable) : -1;
    return known >= 0 ? known : firstGroup(network, variable);
  }

  /** A group of a domain that the last box has too; −1 where there is none. */
  private lastGroup(variable: number): number {
    const { domain } = this.network.layout;
    const { state } = this.network;
    const start = domain[variable] as number;
    for (let w = start; w < (domain[variable + 1] as number); w++) {
      const word = (state[w] as number) & (this.last[w] as number);
      if (word !== 0) return ((w - start) << 5) + lowestBit(word);
    }
    return -1;
  }

  private level(index: number): Uint32Array {
    return (this.pool[index] ??= new Uint32Array(this.network.layout.words));
  }
}
