import { marginOfRounded } from './is-satisfied.js';
import type { ComparisonSpec, MarginKind } from './problem.js';
import { ascending } from './rank.js';
import { roundTo12Digits } from './rounding.js';

/** The next number above x (finite). */
export function nextUp(x: number): number {
  const value = Float64Array.of(x === 0 ? 0 : x);
  const bits = new BigInt64Array(value.buffer);
  bits[0] = (bits[0] as bigint) + (x >= 0 ? 1n : -1n);
  return value[0] as number;
}

/**
 * The sides of a comparison, changed so that demand ≤ limit holds exactly where the margin is at least `atLeast`:
 * each limit becomes the largest demand that keeps the margin to it.
 */
export function keepMargin(
  spec: ComparisonSpec,
  kind: MarginKind,
  atLeast: number,
): { demand: Float64Array; limit: Float64Array } {
  const least = Math.max(0, atLeast);
  // −Infinity is kept for limits that admit no demand.
  const demand = spec.demand.values.map((d) => (d === -Infinity ? -Number.MAX_VALUE : roundTo12Digits(d)));
  const demands = ascending(demand);
  const largest = new Map<number, number>();
  const largestFor = (limit: number): number => {
    // Margins fall as demands rise.
    let low = 0;
    let high = demands.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      const d = demands[middle] as number;
      if (marginOfRounded(d === -Number.MAX_VALUE ? -Infinity : d, limit, kind) >= least) low = middle + 1;
      else high = middle;
    }
    return low === 0 ? -Infinity : (demands[low - 1] as number);
  };
  const limit = spec.limit.values.map((value) => {
    const rounded = roundTo12Digits(value);
    const known = largest.get(rounded) ?? largestFor(rounded);
    largest.set(rounded, known);
    return known;
  });
  return { demand, limit };
}
