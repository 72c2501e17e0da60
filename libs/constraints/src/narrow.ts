import type { NarrowAnswer, System } from '@flangewise/model';
import { type Bench, compileFor } from './bench.js';
import { choiceAt, engineChoices, optionAt } from './choices.js';
import { ruleRevision } from './rule-revision.js';

/**
 * For every slot the options that still lead to a valid whole when only this slot is reconsidered and every other
 * choice is kept. Exact; `exact` is false only when the engine was stopped, then more may be refused.
 */
export const narrow = (system: System, bench: Bench): NarrowAnswer => {
  const { engine, variables } = compileFor(system, bench);
  const answer = engine.narrow({ choices: engineChoices(system, variables), free: true });
  const known = answer.status === 'proved' ? answer.value : answer.known;
  const valid = known?.free ?? known?.valid;
  const slots: NarrowAnswer['slots'] = {};
  variables.forEach((variable, index) => {
    const marks = valid?.[index];
    const ids = variable.options.map((_, value) => optionAt(variable, value)?.id ?? null);
    const chosen = choiceAt(system, variable);
    slots[variable.path] = {
      ...(chosen === undefined ? {} : { chosen }),
      valid: ids.filter((_, value) => marks === undefined || marks[value] === 1),
      refused: ids.filter((_, value) => marks !== undefined && marks[value] !== 1),
    };
  });
  return {
    catalogueRevision: bench.range.revision,
    ruleRevision,
    exact: answer.status === 'proved',
    consistent: known?.consistent ?? true,
    slots,
  };
};
