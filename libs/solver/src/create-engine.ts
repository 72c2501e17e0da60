import { alternatives } from './alternatives.js';
import { audit } from './audit.js';
import { best } from './best.js';
import { BoxPool } from './box-pool.js';
import { checkConstraints, checkProblem } from './check-problem.js';
import { Consistency } from './consistency.js';
import type { Core } from './core.js';
import { compile, recompile } from './core.js';
import { count } from './count.js';
import type { Engine } from './engine.js';
import { explain, whyNot } from './explain.js';
import { front } from './front.js';
import { answer, type Meter } from './meter.js';
import { narrow, propagate } from './narrow.js';
import { NarrowedCache } from './narrowed-cache.js';
import type { Problem } from './problem.js';
import { ProblemError } from './problem.js';
import { checkChoices, checkOption } from './question.js';
import type { QueryOptions } from './answers.js';
import { repair } from './repair.js';
import { SolutionPool } from './solution-pool.js';

function engineOf(core: Core): Engine {
  const pool = new SolutionPool();
  const setting = { core, pool, boxes: new BoxPool(), cache: new NarrowedCache() };
  const checked = <O extends QueryOptions>(options: O): O => {
    checkChoices(core, options.choices ?? []);
    return options;
  };
  return {
    narrow: (options = {}) => answer(checked(options), (meter) => narrow(setting, options, meter)),
    propagate: (options = {}) => propagate(core, checked(options)),
    consistent: (options = {}) =>
      answer(checked(options), (meter: Meter<boolean>) =>
        new Consistency(core, pool, meter).check(options.choices ?? []),
      ),
    count: (options = {}) => answer(checked(options), (meter) => count(core, options, meter)),
    best: (options) => answer(checked(options), (meter) => best(core, options, meter)),
    front: (options = {}) => answer(checked(options), (meter) => front(core, options, meter)),
    alternatives: (options) => answer(checked(options), (meter) => alternatives(core, options, meter)),
    explain: (options = {}) => answer(checked(options), (meter) => explain(setting, options, meter)),
    repair: (options) => answer(checked(options), (meter) => repair(setting, options, meter)),
    whyNot: (options) => {
      checkOption(core, options);
      return answer(checked(options), (meter) => whyNot(setting, options, meter));
    },
    audit: (options = {}) => answer(checked(options), (meter) => audit(setting, options, meter)),
    replaceConstraints: (specs) => {
      for (const { id } of specs)
        if (!core.drafts.has(id))
          throw new ProblemError(`there is no constraint ${id} to replace; create a new engine instead`, id);
      checkConstraints(core.sizes, specs);
      return engineOf(recompile(core, specs));
    },
  };
}

/**
 * Compiles a problem into an engine that answers questions about it. Engines keep solutions between queries to be faster,
 * which changes no answer that is proved, other than which of several equal solutions is given.
 * @throws ProblemError where the problem makes no sense
 */
export function createEngine(problem: Problem): Engine {
  checkProblem(problem);
  return engineOf(compile(problem));
}
