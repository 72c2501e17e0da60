import type { Layout } from './layout.js';

/** Groups shown to be part of a solution. */
export class Witnesses {
  /** Words laid out as domains. */
  readonly shown: Uint32Array;

  constructor(private readonly layout: Layout) {
    this.shown = new Uint32Array(layout.domain[layout.variables] as number);
  }

  /** Shows the groups of a solution. */
  add(solution: Int32Array): void {
    const { domain } = this.layout;
    for (let x = 0; x < solution.length; x++) {
      const g = solution[x] as number;
      const at = (domain[x] as number) + (g >>> 5);
      this.shown[at] = (this.shown[at] as number) | (1 << (g & 31));
    }
  }

  /** Shows the groups of some variables in a box. */
  addBox(box: Uint32Array, variables: Iterable<number>): void {
    const { domain } = this.layout;
    for (const x of variables)
      for (let w = domain[x] as number; w < (domain[x + 1] as number); w++)
        this.shown[w] = (this.shown[w] as number) | (box[w] as number);
  }

  has(variable: number, group: number): boolean {
    const at = (this.layout.domain[variable] as number) + (group >>> 5);
    return (((this.shown[at] as number) >>> (group & 31)) & 1) === 1;
  }
}
