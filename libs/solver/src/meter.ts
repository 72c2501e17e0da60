import type { Answer, QueryOptions } from './answers.js';

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

  constructor(private readonly options: QueryOptions) {
    this.limit = options.budget?.nodes ?? Infinity;
  }

  tick(): void {
    if (++this.nodes > this.limit) throw new Interruption('budget');
    this.check();
  }

  check(): void {
    if (this.options.signal?.aborted === true) throw new Interruption('cancelled');
  }

  report(done: number, of?: number): void {
    this.options.onProgress?.(of === undefined ? { done } : { done, of });
  }
}

/** Runs a query to its end, or to the moment it is stopped. */
export function answer<T>(options: QueryOptions, run: (meter: Meter<T>) => T): Answer<T> {
  const meter = new Meter<T>(options);
  try {
    return { status: 'proved', value: run(meter) };
  } catch (trouble) {
    if (trouble instanceof Interruption)
      return { status: 'not proved', known: meter.known(), reason: trouble.reason };
    throw trouble;
  }
}
