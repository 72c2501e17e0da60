/** What is known under one object: a result, or what is known under a further one. */
type Level<R> = WeakMap<object, R | Level<R>>;

/**
 * A pure function of objects that never change, worked out once for each combination: tabulation asks for it again
 * beside every part that it does not hang on.
 */
export const once = <A extends readonly object[], R extends number | undefined>(
  work: (...of: A) => R,
): ((...of: A) => R) => {
  const root: Level<R> = new WeakMap();
  return (...of) => {
    let level = root;
    for (const key of of.slice(0, -1)) {
      const next = (level.get(key) as Level<R> | undefined) ?? (new WeakMap() as Level<R>);
      level.set(key, next);
      level = next;
    }
    const last = of.at(-1) ?? root;
    if (level.has(last)) return level.get(last) as R;
    const result = work(...of);
    level.set(last, result);
    return result;
  };
};
