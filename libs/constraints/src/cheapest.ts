import type { System } from '@flangewise/model';
import { type Bench, compileFor } from './bench.js';
import { engineChoices } from './choices.js';
import type { SlotVariable } from './variable.js';

export interface Filled {
  readonly variables: readonly SlotVariable[];
  readonly solution: Int32Array;
  /** Additive list price; absent where the person may not see prices. */
  readonly cost?: number;
  readonly proved: boolean;
}

/** Whether what is said and chosen still leads to a whole. A stopped search counts as possible: never "impossible" unproved. */
export const isPossible = (system: System, bench: Bench): boolean => {
  const { engine, variables } = compileFor(system, bench);
  const answer = engine.consistent({ choices: engineChoices(system, variables) });
  return answer.status !== 'proved' || answer.value;
};

/** The cheapest whole that keeps what is said and chosen; undefined when there is none. */
export const cheapest = (system: System, bench: Bench): Filled | undefined => {
  const { engine, variables } = compileFor(system, bench);
  const answer = engine.best({ objective: { kind: 'cost' }, choices: engineChoices(system, variables) });
  const found = answer.status === 'proved' ? answer.value : answer.known;
  if (found === null || found === 'impossible') return undefined;
  return {
    variables,
    solution: found.solution,
    proved: answer.status === 'proved',
    ...(bench.range.prices === undefined ? {} : { cost: found.cost }),
  };
};
