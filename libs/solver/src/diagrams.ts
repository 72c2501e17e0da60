import { bitCount } from './bits.js';
import type { SolverDiagram } from './compile-diagram.js';
import { compileDiagram } from './compile-diagram.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';

/** Work up to which the whole problem is compiled, and a state that choices have narrowed (see compileDiagram). */
const MOST_WORK = 1_000_000;
const MOST_WORK_NARROWED = 150_000;
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
  private known: SolverDiagram | null | undefined;

  constructor(
    private readonly network: Network,
    private readonly root: Uint32Array,
  ) {}

  /** The diagram of the whole problem, or null where it takes too much work. */
  whole(meter: Ticker): SolverDiagram | null {
    if (this.known === undefined) this.known = this.compile(this.root, MOST_WORK, meter);
    return this.known;
  }

  /** A diagram that covers a state within the root, or null where none is small enough. */
  within(state: Uint32Array, meter: Ticker): SolverDiagram | null {
    const { network, root } = this;
    const whole = this.whole(meter);
    if (whole) return whole;
    if (bitsOf(network, state) > NARROWED * bitsOf(network, root)) return null;
    return this.compile(state, MOST_WORK_NARROWED, meter);
  }

  private compile(state: Uint32Array, mostWork: number, meter: Ticker): SolverDiagram | null {
    return compileDiagram({ network: this.network, state, mostWork, mostTuples: MOST_TUPLES }, meter);
  }
}
