import type { ClassOrder } from './class-order.js';
import type { Network } from './network.js';
import type { ConstraintSpec } from './problem.js';

/** How much work one propagation is, for the order of the queue. */
export type Effort = 0 | 1 | 2;

/** What a constraint asks at least: the weights of the classes, one a position, add up to `most` or less. */
export interface Inequality {
  /** By position and class; finite. */
  readonly weights: readonly Float64Array[];
  readonly most: number;
  /** Position that sets the limit, where there is one. */
  readonly limit?: number;
}

/**
 * A compiled constraint over views (see layout). Positions are places in `views`.
 * None of the methods keeps state between calls, so going back in a search needs no undoing.
 */
export interface Constraint {
  readonly id: string;
  readonly spec: ConstraintSpec;
  readonly views: Int32Array;
  readonly effort: Effort;
  /**
   * Removes classes without support from the network's state.
   * @returns false where nothing is left
   */
  propagate(network: Network): boolean;
  /**
   * For a constraint that `propagate` found without support: positions whose present classes alone are enough for that,
   * whatever the classes of the others.
   */
  explain(network: Network): number[];
  /**
   * Whether `propagate` leaves only classes that have support in the network's state. Where not, it is exact once all its
   * positions are fixed.
   */
  isExact(network: Network): boolean;
  /** Whether a class of each position, taken together, meets the constraint. */
  allows(classes: Int32Array): boolean;
  /** Inequalities that every combination meets which meets the constraint. Only sums and the like have them. */
  readonly inequalities?: readonly Inequality[];
  /** Inequalities in whole numbers that hold together exactly where the constraint is met, where it has such. */
  readonly wholeInequalities?: readonly Inequality[] | null;
  /** Read from the declaration, independent of `propagate`. */
  isSatisfied(solution: Int32Array): boolean;
  /**
   * For each class of each position the cost of the cheapest combination of present classes that contains it and meets the
   * constraint, given a cost for each class; Infinity where there is none. The arrays are used again by the next call.
   * Only constraints that can work this out quickly offer it.
   */
  cheapestOf?(network: Network, costs: readonly Float64Array[]): readonly Float64Array[];
  /** Which classes of a position may stand in for which; null where working it out takes too long. */
  orderOf?(position: number): ClassOrder | null;
}
