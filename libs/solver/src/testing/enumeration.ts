import type { Choice, Solution } from '../answers.js';
import { isSatisfied, marginOf } from '../is-satisfied.js';
import type { ConstraintSpec, Problem } from '../problem.js';

/** Every solution of a small problem, by trying all combinations of values. */
export function allSolutions(
  problem: Problem,
  constraints: readonly ConstraintSpec[] = problem.constraints,
): Int32Array[] {
  const sizes = problem.variables.map((v) => v.size);
  const found: Int32Array[] = [];
  const values = new Int32Array(sizes.length);
  for (;;) {
    if (constraints.every((c) => isSatisfied(c, sizes, values))) found.push(Int32Array.from(values));
    let x = sizes.length - 1;
    while (x >= 0) {
      values[x] = (values[x] as number) + 1;
      if ((values[x] as number) < (sizes[x] as number)) break;
      values[x--] = 0;
    }
    if (x < 0) return found;
  }
}

export const keeps = (solution: Int32Array, choices: readonly Choice[]): boolean =>
  choices.every((c) => solution[c.variable] === c.value);

export function measured(problem: Problem, solution: Int32Array): Solution {
  const sizes = problem.variables.map((v) => v.size);
  const of = (list: Int32Array | undefined, x: number): number => list?.[solution[x] as number] ?? 0;
  return {
    solution,
    cost: problem.variables.reduce((sum, v, x) => sum + of(v.cost, x), 0),
    delay: problem.variables.reduce((most, v, x) => Math.max(most, of(v.delay, x)), 0),
    margin: problem.constraints.reduce((least, c) => Math.min(least, marginOf(c, sizes, solution)), Infinity),
  };
}
