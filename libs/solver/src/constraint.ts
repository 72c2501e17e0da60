import type { Network } from './network.js';
import type { ConstraintSpec } from './problem.js';

/** How much work one propagation is, for the order of the queue. */
export type Effort = 0 | 1 | 2;

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
  /** Read from the declaration, independent of `propagate`. */
  isSatisfied(solution: Int32Array): boolean;
  /**
   * Clears in `flips` (words laid out as views) the classes to which a position cannot move alone,
   * starting from an assignment that meets the constraint. Positions of one variable move together.
   */
  keepFlips(network: Network, assignment: Int32Array, flips: Uint32Array): void;
}
