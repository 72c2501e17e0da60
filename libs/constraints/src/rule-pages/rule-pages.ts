import { citationText, shortCitation } from '@flangewise/engineering';
import type { RulePage, RuleSource, SourceReference } from '@flangewise/model';
import type { Rule } from '../rule.js';
import { ruleBook } from '../rule-book.js';
import type { RuleCases, Setup } from '../testing/rule-case.js';
import { ruleCases } from '../testing/rule-cases.js';
import { conditionWords } from './condition-words.js';
import { decidesOf, effectOf, marginOf } from './how-it-decides.js';
import { calculationsOf } from './rule-calculations.js';
import { rulePartsOf } from './rule-parts.js';
import { samplesOf } from './rule-samples.js';

export { ruleRevision } from '../rule-revision.js';

const sourceOf = (source: SourceReference): RuleSource => ({
  ...source,
  short: shortCitation(source.citation),
  full: citationText(source.citation),
});

const mediaIn = ({ conditions, beside }: Setup): readonly string[] => [
  ...(conditions?.media ?? []).map(({ name }) => name),
  ...(conditions?.gases ?? []),
  ...(beside ?? []).flatMap(mediaIn),
];

/** The page of one rule, from its declaration and its cases. */
export const rulePageOf = (rule: Rule, ruleCase: RuleCases): RulePage => {
  const { samples, results } = samplesOf(rule, ruleCase);
  const margin = marginOf(rule);
  const setups: readonly Setup[] = [
    ...ruleCase.cases,
    ...(ruleCase.edge === undefined ? [] : [ruleCase.edge]),
  ];
  const media = [...new Set(setups.flatMap(mediaIn))];
  const sources = [...new Map(rule.source.map((one) => [`${one.citation} ${one.basis}`, one])).values()];
  return {
    id: rule.id,
    title: rule.title,
    group: rule.group,
    kind: rule.kind,
    effect: effectOf[rule.kind],
    decides: decidesOf(rule),
    parts: rulePartsOf(rule),
    conditions: rule.conditions.map((name) => conditionWords[name]),
    ...('met' in rule ? { met: rule.met } : {}),
    ...(margin === undefined ? {} : { margin }),
    calculations: calculationsOf(results),
    samples,
    media: media.sort((a, b) => a.localeCompare(b, 'en')),
    sources: sources.map(sourceOf),
  };
};

let pages: readonly RulePage[] | undefined;

/** One page a rule, in the order of the book; worked out once. */
export const rulePages = (): readonly RulePage[] =>
  (pages ??= ruleBook.map((rule) => rulePageOf(rule, ruleCases[rule.id] ?? { cases: [] })));
