/** Where the baffles of a set stand: evenly, the front midway between two of them; clockwise from the front [deg]. */
export const baffleAnglesDeg = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, k) => ((k + 0.5) * 360) / count);
