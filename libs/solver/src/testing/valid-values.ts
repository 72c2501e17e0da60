import type { Problem } from '../problem.js';

/** Flags of the values that stand in a solution, as `narrow` gives them. */
export const validValues = ({ variables }: Problem, solutions: readonly Int32Array[]): Uint8Array[] =>
  variables.map(({ size }, x) =>
    Uint8Array.from({ length: size }, (_, v) => (solutions.some((solution) => solution[x] === v) ? 1 : 0)),
  );
