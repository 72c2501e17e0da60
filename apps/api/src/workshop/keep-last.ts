/** What was made last, by key: `most` of them are kept, those that nobody asked for longest are forgotten. */
export interface KeepLast<V> {
  /** What was kept under the key, else what `make` makes, kept from now on. */
  get(key: string, make: () => V): V;
  forget(key: string): void;
}

export function keepLast<V>(most: number): KeepLast<V> {
  const kept = new Map<string, V>();
  return {
    get(key, make) {
      const found = kept.has(key) ? (kept.get(key) as V) : make();
      // Taken out and put in again: the last asked for stands last.
      kept.delete(key);
      kept.set(key, found);
      const [oldest] = kept.keys();
      if (kept.size > most && oldest !== undefined) kept.delete(oldest);
      return found;
    },
    forget: (key) => void kept.delete(key),
  };
}
