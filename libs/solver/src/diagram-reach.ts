import type { AndOrDiagram } from './and-or-diagram.js';
import type { Layout } from './layout.js';

/** Which groups of a state are part of a combination of a diagram: one pass up and one down. */
export class DiagramReach {
  /** Words laid out as domains; those of variables outside the diagram stay empty. */
  readonly reached: Uint32Array;
  private readonly leads: Uint8Array;
  private readonly edgeLeads: Uint8Array;
  private readonly isReached: Uint8Array;

  constructor(
    private readonly diagram: AndOrDiagram,
    private readonly layout: Layout,
  ) {
    const nodes = diagram.variable.length;
    this.reached = new Uint32Array(layout.domain[layout.variables] as number);
    this.leads = new Uint8Array(nodes);
    this.isReached = new Uint8Array(nodes);
    this.edgeLeads = new Uint8Array(diagram.firstEdge[nodes] as number);
  }

  /** @returns false where no combination is left */
  run(state: Uint32Array): boolean {
    this.up(state);
    for (const root of this.diagram.roots) if (this.leads[root] === 0) return false;
    this.down(state);
    return true;
  }

  private up(state: Uint32Array): void {
    const { variable, firstEdge, firstGroup, groups, firstBelow, below } = this.diagram;
    const { leads, edgeLeads } = this;
    const { domain } = this.layout;
    for (let n = 0; n < variable.length; n++) {
      const start = domain[variable[n] as number] as number;
      const end = firstEdge[n + 1] as number;
      let isLeading = 0;
      for (let e = firstEdge[n] as number; e < end; e++) {
        let leadsOn = 1;
        const lastBelow = firstBelow[e + 1] as number;
        for (let b = firstBelow[e] as number; b < lastBelow; b++)
          if (leads[below[b] as number] === 0) {
            leadsOn = 0;
            break;
          }
        if (leadsOn === 1) {
          leadsOn = 0;
          const lastGroup = firstGroup[e + 1] as number;
          for (let i = firstGroup[e] as number; i < lastGroup; i++) {
            const g = groups[i] as number;
            if ((((state[start + (g >>> 5)] as number) >>> (g & 31)) & 1) === 0) continue;
            leadsOn = 1;
            break;
          }
        }
        edgeLeads[e] = leadsOn;
        isLeading |= leadsOn;
      }
      leads[n] = isLeading;
    }
  }

  private down(state: Uint32Array): void {
    const { variable, firstEdge, firstGroup, groups, firstBelow, below, roots } = this.diagram;
    const { edgeLeads, isReached, reached } = this;
    const { domain } = this.layout;
    reached.fill(0);
    isReached.fill(0);
    for (const root of roots) isReached[root] = 1;
    for (let n = variable.length - 1; n >= 0; n--) {
      if (isReached[n] === 0) continue;
      const start = domain[variable[n] as number] as number;
      const end = firstEdge[n + 1] as number;
      for (let e = firstEdge[n] as number; e < end; e++) {
        if (edgeLeads[e] === 0) continue;
        const lastGroup = firstGroup[e + 1] as number;
        for (let i = firstGroup[e] as number; i < lastGroup; i++) {
          const g = groups[i] as number;
          const w = start + (g >>> 5);
          reached[w] = (reached[w] as number) | ((state[w] as number) & (1 << (g & 31)));
        }
        const lastBelow = firstBelow[e + 1] as number;
        for (let b = firstBelow[e] as number; b < lastBelow; b++) isReached[below[b] as number] = 1;
      }
    }
  }
}
