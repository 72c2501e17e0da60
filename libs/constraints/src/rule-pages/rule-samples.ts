import type { RuleResult, RuleSample } from '@flangewise/model';
import type { Rule } from '../rule.js';
import { sentenceCase } from '../sentence-case.js';
import { atLimit, resultsOf, type RuleCases, verdictOf } from '../testing/rule-case.js';

export interface SampledRule {
  readonly samples: readonly RuleSample[];
  /** Everything that it said, with evidence. */
  readonly results: readonly RuleResult[];
}

const sampleOf = (name: string, results: readonly RuleResult[]): RuleSample => {
  const shown = results.find((result) => result.shown !== undefined)?.shown;
  return {
    name,
    says: verdictOf(results),
    ...(shown === undefined ? {} : { shown }),
    texts: [...new Set(results.map((result) => sentenceCase(result.text)))],
  };
};

/** What a rule says of its cases, and on either side of its limit where it has one. */
export const samplesOf = (rule: Rule, { cases, edge }: RuleCases): SampledRule => {
  const told = cases.map((one) => ({ name: one.name, results: resultsOf(rule, one) }));
  const limit = edge === undefined ? undefined : atLimit(rule, edge);
  const around =
    limit === undefined
      ? []
      : [
          { name: 'at the limit', results: limit.on },
          { name: 'just past the limit', results: limit.past },
        ];
  const all = [...told, ...around];
  return {
    samples: all.map(({ name, results }) => sampleOf(name, results)),
    results: all.flatMap(({ results }) => results),
  };
};
