import type { Solution } from './answers.js';
import type { Core } from './core.js';
import { marginOf } from './is-satisfied.js';

/** Total cost, delay and least margin of a solution. */
export function measure(core: Core, solution: Int32Array): Solution {
  let cost = 0;
  let delay = 0;
  let margin = Infinity;
  for (const [x, variable] of core.problem.variables.entries()) {
    const value = solution[x] as number;
    cost += variable.cost?.[value] ?? 0;
    delay = Math.max(delay, variable.delay?.[value] ?? 0);
  }
  for (const spec of core.problem.constraints)
    margin = Math.min(margin, marginOf(spec, core.sizes, solution));
  return { solution, cost, delay, margin };
}

/**
 * Checks a solution against every declaration before it leaves the engine.
 * @throws Error where one is not met: a fault of the engine, which must never be passed on
 */
export function verified(core: Core, solution: Int32Array): Solution {
  for (const constraint of core.constraints)
    if (!constraint.isSatisfied(solution))
      throw new Error(
        `the engine found a solution that does not meet constraint ${constraint.id}; please report`,
      );
  return measure(core, solution);
}
