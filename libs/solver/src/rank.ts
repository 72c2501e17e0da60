import { roundTo12Digits } from './rounding.js';

/** The distinct values, ascending. */
export function ascending(values: Float64Array): Float64Array {
  const sorted = values.slice().sort();
  let count = 0;
  for (let i = 0; i < sorted.length; i++)
    if (i === 0 || sorted[i] !== sorted[count - 1]) sorted[count++] = sorted[i] as number;
  return sorted.slice(0, count);
}

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
  const below = new Int32Array(demands.length);
  const isBelow = new Uint8Array(distinctLimits.length + 1);
  for (let i = 0; i < demands.length; i++) {
    const count = countBelow(distinctLimits, demands[i] as number);
    below[i] = count;
    isBelow[count] = 1;
  }
  // How many of the counts that occur are smaller.
  const rankOf = new Int32Array(isBelow.length + 1);
  for (let count = 0; count < isBelow.length; count++)
    rankOf[count + 1] = (rankOf[count] as number) + (isBelow[count] as number);
  const demandLoads = new Int32Array(demands.length);
  for (let i = 0; i < demands.length; i++) demandLoads[i] = (rankOf[below[i] as number] as number) + 1;
  const limitLoads = new Int32Array(limits.length);
  for (let j = 0; j < limits.length; j++)
    limitLoads[j] = -(rankOf[countBelow(distinctLimits, limits[j] as number) + 1] as number);
  return { demand: demandLoads, limit: limitLoads };
}
