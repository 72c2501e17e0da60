/**
 * A minimal subset of `items` that is inconsistent: every part of it is consistent (Junker, QuickXplain, AAAI 2004).
 * Earlier items are preferred. All items together are inconsistent; if none is needed the result is empty.
 * @param isConsistent asked with subsets, in the order of `items`
 */
export function quickXplain<T>(items: readonly T[], isConsistent: (subset: readonly T[]) => boolean): T[] {
  if (!isConsistent([])) return [];
  const within = (background: readonly T[], addedLast: boolean, candidates: readonly T[]): T[] => {
    if (addedLast && !isConsistent(background)) return [];
    if (candidates.length <= 1) return [...candidates];
    const half = candidates.length >>> 1;
    const [first, second] = [candidates.slice(0, half), candidates.slice(half)];
    const needed = within([...background, ...first], first.length > 0, second);
    return [...within([...background, ...needed], needed.length > 0, first), ...needed];
  };
  return within([], false, items);
}
