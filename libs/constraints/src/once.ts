type Level<R> = WeakMap<object, R>;

const within = <R>(level: Level<R>, key: object, make: () => R): R => {
  const found = level.get(key);
  if (found !== undefined) return found;
  const made = make();
  level.set(key, made);
  return made;
};

/**
 * A pure function of three objects that never change, worked out once for each combination: tabulation asks for it
 * again beside every part that it does not hang on. Returns no undefined.
 */
export const once = <A extends object, B extends object, C extends object, R extends object | number>(
  work: (a: A, b: B, c: C) => R,
): ((a: A, b: B, c: C) => R) => {
  const known: Level<Level<Level<R>>> = new WeakMap();
  return (a, b, c) =>
    within(
      within(
        within(known, a, () => new WeakMap()),
        b,
        () => new WeakMap(),
      ),
      c,
      () => work(a, b, c),
    );
};
