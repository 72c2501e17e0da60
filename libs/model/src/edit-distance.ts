/** Letters to change, add, drop or swap with their neighbour to make one word of the other (optimal string alignment). */
export const editDistance = (a: string, b: string): number => {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number): number => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j++) {
      const swap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(
        Math.min(
          at(i - 1, j) + 1,
          at(i, j - 1) + 1,
          at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1),
          swap ? at(i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
  }
  return at(a.length, b.length);
};

/** The known name that a misspelt one is nearest to; undefined where none is near. */
export const nearestName = (given: string, known: readonly string[]): string | undefined => {
  const wanted = given.trim().toLowerCase();
  const most = wanted.length < 5 ? 1 : 2;
  return known.reduce<{ readonly name?: string; readonly distance: number }>(
    (best, name) => {
      if (Math.abs(name.length - wanted.length) >= best.distance) return best;
      const distance = editDistance(wanted, name.toLowerCase());
      return distance < best.distance ? { name, distance } : best;
    },
    { distance: most + 1 },
  ).name;
};
