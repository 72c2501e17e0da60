/*
 * Sets as words of 32 bits. Throughout the engine indices are in range by construction; `as number` after an index
 * states that to the compiler at no cost.
 */

export const wordsFor = (count: number): number => (count + 31) >>> 5;

/** Number of bits set in a word. */
export function bitCount(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const nibbles = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((nibbles + (nibbles >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Index of the lowest bit set; the word is not 0. */
export const lowestBit = (word: number): number => 31 - Math.clz32(word & -word);

/** A set of `count` members, all present. */
export function fullSet(count: number): Uint32Array {
  const set = new Uint32Array(wordsFor(count)).fill(0xffffffff);
  if ((count & 31) !== 0) set[set.length - 1] = 0xffffffff >>> (32 - (count & 31));
  return set;
}
