import type { Network } from './network.js';

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
