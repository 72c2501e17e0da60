/**
 * A number rounded to 12 significant digits, so that every machine compares limits alike.
 * Integers below 10¹² and infinities stay as they are.
 */
export const roundTo12Digits = (x: number): number =>
  (Number.isInteger(x) && Math.abs(x) < 1e12) || !Number.isFinite(x) ? x : Number(x.toPrecision(12));
