import { lowestBit } from './bits.js';
import type { Network } from './network.js';

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

  /** Shows the groups of a solution, without looking at what may replace them. */
  add(solution: Int32Array): void {
    const { domain } = this.network.layout;
    for (let x = 0; x < solution.length; x++) {
      const g = solution[x] as number;
      const at = (domain[x] as number) + (g >>> 5);
      this.shown[at] = (this.shown[at] as number) | (1 << (g & 31));
    }
  }

  has(variable: number, group: number): boolean {
    const at = (this.network.layout.domain[variable] as number) + (group >>> 5);
    return (((this.shown[at] as number) >>> (group & 31)) & 1) === 1;
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
