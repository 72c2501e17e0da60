import { bitCount } from './bits.js';
import type { SolverDiagram } from './compile-diagram.js';
import { compileDiagram } from './compile-diagram.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';

/** Nodes up to which the whole problem is compiled, and a state that choices have narrowed. */
const MOST_NODES = 30_000;
/** Nodes up to which it is compiled where an answer does not depend on it. */
const MOST_NODES_AT_HAND = 6_000;
const MOST_NODES_NARROWED = 6_000;
const MOST_TUPLES = 60_000;
/** A narrowed state is tried where it has at most this part of the whole problem's open domains (in bits). */
const NARROWED = 0.6;

/** Bits it takes to tell the combinations of a state's domains apart. */
function bitsOf(network: Network, state: Uint32Array): number {
  const { layout } = network;
  let bits = 0;
  for (let x = 0; x < layout.variables; x++) {
    let size = 0;
    for (let w = layout.domain[x] as number; w < (layout.domain[x + 1] as number); w++)
      size += bitCount(state[w] as number);
    bits += Math.log2(size);
  }
  return bits;
}

/**
 * The diagram of a problem, made when it is first needed. Which diagram a query gets depends on the query alone, never on
 * what was asked before, so that of several equal solutions always the same is found.
 */
export class Diagrams {
  private whole: SolverDiagram | null | undefined;
  private isLarge = false;

  constructor(
    private readonly network: Network,
    private readonly root: Uint32Array,
  ) {}

  /** The diagram of the whole problem if there is one, or if it is quickly made. */
  atHand(meter: Ticker): SolverDiagram | null {
    if (this.whole === undefined && !this.isLarge) {
      const diagram = this.compile(this.root, MOST_NODES_AT_HAND, meter);
      if (diagram) this.whole = diagram;
      else this.isLarge = true;
    }
    return this.whole ?? null;
  }

  /** A diagram that covers a state within the root, or null where none is small enough. */
  within(state: Uint32Array, meter: Ticker): SolverDiagram | null {
    const { network, root } = this;
    if (this.whole === undefined) this.whole = this.compile(root, MOST_NODES, meter);
    if (this.whole) return this.whole;
    if (bitsOf(network, state) > NARROWED * bitsOf(network, root)) return null;
    return this.compile(state, MOST_NODES_NARROWED, meter);
  }

  private compile(state: Uint32Array, mostNodes: number, meter: Ticker): SolverDiagram | null {
    return compileDiagram({ network: this.network, state, mostNodes, mostTuples: MOST_TUPLES }, meter);
  }
}
