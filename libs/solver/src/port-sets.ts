import { roundTo12Digits } from './rounding.js';

/** How many ports of each set there are, or how many needs find ports in that set alone. */
export type Counts = Int32Array;

/** Ports of a size from one on, and ports that let another through; Infinity: none of that sort. */
interface PortSet {
  readonly size: number;
  readonly reach: number;
}

const rising = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);

/**
 * The sets of ports at which Hall's condition has to be checked: everything finds a port of its own exactly when no set has
 * fewer ports than there are needs that only its ports can meet. What a need can use grows with falling size, so that
 * the unions of those are all the sets there are.
 */
export class PortSets {
  /** Sizes of what reaches through, rising. A port's level is how many of them it lets through. */
  readonly reaching: readonly number[];
  private readonly sets: readonly PortSet[];

  constructor(needs: Iterable<{ readonly size: number; readonly reaches: boolean }>) {
    const all = Array.from(needs, ({ size, reaches }) => ({ size: roundTo12Digits(size), reaches }));
    this.reaching = rising(all.filter((n) => n.reaches).map((n) => n.size));
    const sizes = [...rising(all.map((n) => n.size)), Infinity];
    const reaches = [...this.reaching, Infinity];
    // What lets a larger part through is of the larger size, and in the set already.
    this.sets = sizes.flatMap((size) =>
      reaches
        .filter((reach) => reach < size || (reach === Infinity && size < Infinity))
        .map((reach) => ({ size, reach })),
    );
  }

  get count(): number {
    return this.sets.length;
  }

  /** Needs that only ports of each set can meet. */
  needs(sizes: Iterable<number>, reaches: boolean): Counts {
    const list = Array.from(sizes, roundTo12Digits);
    return this.countsOf(
      (set) => list.filter((size) => size >= set.size || (reaches && size >= set.reach)).length,
    );
  }

  /** Where a port counts that lets as many of the reaching sizes through as its level says. */
  port(size: number, level: number): Counts {
    const own = roundTo12Digits(size);
    const through = level === 0 ? -Infinity : (this.reaching[level - 1] as number);
    return this.countsOf((set) => (own >= set.size || through >= set.reach ? 1 : 0));
  }

  levelOf(through: number): number {
    const own = roundTo12Digits(through);
    return this.reaching.filter((size) => size <= own).length;
  }

  private countsOf(of: (set: PortSet) => number): Counts {
    return Int32Array.from(this.sets, of);
  }
}

export const addTo = (sum: Counts, counts: Counts, sign: number): void => {
  for (let k = 0; k < sum.length; k++) sum[k] = (sum[k] as number) + sign * (counts[k] as number);
};

export const isWithin = (needed: Counts, ports: Counts): boolean => {
  for (let k = 0; k < needed.length; k++) if ((needed[k] as number) > (ports[k] as number)) return false;
  return true;
};
