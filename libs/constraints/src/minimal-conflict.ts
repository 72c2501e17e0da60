/** Asks whether a selection of statements can hold together. */
export type Holds<T> = (statements: readonly T[]) => boolean;

/**
 * A minimal subset of `statements` that cannot hold together with `background` (QuickXplain, Junker 2004): dropping
 * any of its members leaves something that can. Undefined when all of them can hold.
 * Earlier statements are the ones one would rather keep; the conflict is looked for among the later ones first.
 */
export const minimalConflict = <T>(
  statements: readonly T[],
  holds: Holds<T>,
  background: readonly T[] = [],
): readonly T[] | undefined => {
  if (holds([...background, ...statements])) return undefined;
  const search = (kept: readonly T[], added: readonly T[], candidates: readonly T[]): readonly T[] => {
    if (added.length > 0 && !holds(kept)) return [];
    if (candidates.length <= 1) return candidates;
    const half = Math.ceil(candidates.length / 2);
    const first = candidates.slice(0, half);
    const second = candidates.slice(half);
    const fromSecond = search([...kept, ...first], first, second);
    const fromFirst = search([...kept, ...fromSecond], fromSecond, first);
    return [...fromFirst, ...fromSecond];
  };
  return search(background, [], statements);
};
