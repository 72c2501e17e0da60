import { roundTo12Digits } from './rounding.js';

/** The distinct values, ascending. */
export const ascending = (values: Iterable<number>): Float64Array =>
  Float64Array.from(new Set(values)).sort();

/** Number of entries of a sorted list below x. */
export function countBelow(sorted: Float64Array, x: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((sorted[middle] as number) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Replaces two sides by integer loads: demand[i] ≤ limit[j] (both rounded to 12 digits) exactly where the loads of i and
 * j add up to 0 or less. Numbers that compare alike with every number of the other side get the same load.
 */
export function compareByRank(
  demand: Float64Array,
  limit: Float64Array,
): { demand: Int32Array; limit: Int32Array } {
  const demands = demand.map(roundTo12Digits);
  const limits = limit.map(roundTo12Digits);
  const distinctLimits = ascending(limits);
  const below = Float64Array.from(demands, (d) => countBelow(distinctLimits, d));
  const distinctBelow = ascending(below);
  return {
    demand: Int32Array.from(below, (b) => countBelow(distinctBelow, b) + 1),
    limit: Int32Array.from(limits, (l) => -countBelow(distinctBelow, countBelow(distinctLimits, l) + 0.5)),
  };
}
