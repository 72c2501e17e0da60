import type { Answer, QueryOptions } from './answers.js';

const NODES_BETWEEN_REPORTS = 100;

/** Stops a query from inside. It cannot be taken for a proof, because nothing between here and `answer` catches it. */
class Interruption extends Error {
  constructor(readonly reason: 'cancelled' | 'budget') {
    super(reason);
  }
}

/** What the parts of a query see of its meter. */
export interface Ticker {
  /** Called at each search node, or each comparable amount of work; stops the query when it is due. */
  tick(): void;
  /** Only looks whether the query is cancelled. */
  check(): void;
}

/** Counts the search nodes of one query, watches its signal, and keeps what is known so far. */
export class Meter<T> implements Ticker {
  nodes = 0;
  /** What is known so far, worked out only where the query is stopped. */
  known: () => T | null = () => null;
  private readonly limit: number;
  private steps: { readonly done: number; readonly of?: number } = { done: 0 };

  constructor(private readonly options: QueryOptions) {
    this.limit = options.budget?.nodes ?? Infinity;
  }

  tick(): void {
    if (++this.nodes > this.limit) throw new Interruption('budget');
    if (this.nodes % NODES_BETWEEN_REPORTS === 0) this.say();
    this.check();
  }

  check(): void {
    if (this.options.signal?.aborted === true) throw new Interruption('cancelled');
  }

  report(done: number, of?: number): void {
    this.steps = of === undefined ? { done } : { done, of };
    this.say();
  }

  /** Tells how far the query is. */
  say(): void {
    this.options.onProgress?.({ nodes: this.nodes, ...this.steps });
  }
}

/** Runs a query to its end, or to the moment it is stopped. */
export function answer<T>(options: QueryOptions, run: (meter: Meter<T>) => T): Answer<T> {
  const meter = new Meter<T>(options);
  try {
    meter.check();
    const value = run(meter);
    meter.say();
    return { status: 'proved', value };
  } catch (trouble) {
    if (trouble instanceof Interruption)
      return { status: 'not proved', known: meter.known(), reason: trouble.reason };
    throw trouble;
  }
}
