export interface Random {
  /** In [0, 1). */
  next(): number;
  /** A whole number from 0 up to, but without, `count`. */
  below(count: number): number;
  pick<T>(list: readonly T[]): T;
  shuffled<T>(list: readonly T[]): T[];
}

/** Random numbers from a seed, the same on every machine (mulberry32). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const below = (count: number): number => Math.floor(next() * count);
  const shuffled = <T>(list: readonly T[]): T[] => {
    const mixed = [...list];
    for (let i = mixed.length - 1; i > 0; i--) {
      const j = below(i + 1);
      [mixed[i], mixed[j]] = [mixed[j] as T, mixed[i] as T];
    }
    return mixed;
  };
  return { next, below, pick: (list) => list[below(list.length)] as never, shuffled };
}

/** A number in [0, 1) that a seed and some numbers decide. */
export function hashed(seed: number, values: readonly number[]): number {
  let hash = seed | 0;
  for (const value of values) hash = Math.imul(hash ^ (value + 0x9e37), 0x85ebca6b) ^ (hash >>> 13);
  return ((hash ^ (hash >>> 16)) >>> 0) / 4294967296;
}
