import { standardEnds } from '@flangewise/catalogue';
import { type AuditAnswer, type Item, readDocument, type System, systemSchema } from '@flangewise/model';
import type { Audit } from '@flangewise/solver';
import { alikeItems } from './alike.js';
import { gapsOf } from './audit-gaps.js';
import { type Bench, compileFor, createBench } from './bench.js';
import type { Compiled } from './compile.js';
import { optionAt } from './choices.js';
import type { Rule } from './rule.js';
import { ruleRevision } from './rule-revision.js';
import { ruleIdOf } from './tabulate.js';

/** Asks for nothing: what is dead here is dead for every client. */
const neutralSystem = (): System => {
  const read = readDocument(systemSchema, { inquiry: { title: 'Audit' } });
  if (!read.ok) throw new Error(`the neutral system does not fit its schema: ${JSON.stringify(read.error)}`);
  return read.value;
};

/** Search nodes after which a question of the audit is given up. */
const budget = { nodes: 200_000 };

const titlesOf = (constraints: readonly string[], rules: readonly Rule[]): string => {
  const ids = new Set(constraints.map(ruleIdOf));
  return rules
    .filter((rule) => ids.has(rule.id))
    .map((rule) => `“${rule.title}”`)
    .join(' and ');
};

/** Rated past the end of the standard range: kept for special vessels, which are not in it. */
const isForSpecials = ({ rating }: Item): boolean =>
  rating !== undefined && rating.maxPressurePaGauge > standardEnds.maxPressurePaGauge;

const readsSpecials = (rule: Rule): boolean =>
  rule.form === 'judgement' && Object.values(rule.of).some((reads) => reads.some((one) => one === 'special'));

/** The range with one item of each that are alike, and all that stand for it. */
const withoutRepeats = ({ range, rules }: Bench) => {
  const groups = new Map(alikeItems(range.items.values()).map((group) => [group[0].id, group]));
  const items = new Map([...groups].map(([id, [first]]) => [id, first]));
  return { bench: createBench({ ...range, items }, rules), alikeTo: (id: string) => groups.get(id) ?? [] };
};

/** Items that no whole system can have, each with the rules that leave none, and those that are alike to it. */
const deadItems = (
  found: Audit,
  { engine, variables }: Compiled,
  { bench: { rules }, alikeTo }: ReturnType<typeof withoutRepeats>,
) =>
  found.dead.flatMap(({ variable, value }) => {
    const slot = variables[variable];
    const item = slot === undefined ? null : optionAt(slot, value);
    if (item === null || isForSpecials(item)) return [];
    const asked = engine.whyNot({ variable, value, budget });
    const why = asked.status === 'proved' ? asked.value : asked.known;
    const titles = why?.kind === 'conflict' ? titlesOf(why.constraints, rules) : '';
    const reason =
      titles === ''
        ? 'no whole system has it; which rules keep it out was not found in time.'
        : `no whole system has it: whatever it is combined with, ${titles} leaves nothing.`;
    return alikeTo(item.id).map(({ id, name }) => ({ item: id, reason: `${name}: ${reason}` }));
  });

/**
 * Rules that could be dropped without changing any answer about this range: those that others imply, and those that
 * read nothing of an inquiry and never refuse. A rule that only binds once an inquiry says more is none of them.
 */
const redundantRules = (found: Audit, rules: readonly Rule[]): readonly string[] => {
  const idle = new Map<string, number>();
  const implied = new Map<string, number>();
  const count = (into: Map<string, number>, ids: readonly string[]): void => {
    for (const id of ids.map(ruleIdOf)) into.set(id, (into.get(id) ?? 0) + 1);
  };
  count(idle, found.neverBinding);
  count(implied, found.redundant);
  return rules.flatMap((rule) => {
    if (rule.kind !== 'hard' || readsSpecials(rule)) return [];
    const constraints = rule.form === 'part' ? rule.each.length : 1;
    const isIdle = (idle.get(rule.id) ?? 0) === constraints;
    const isImplied = (implied.get(rule.id) ?? 0) === constraints;
    if (isIdle)
      return rule.conditions.length === 0
        ? [`${rule.id}: refuses nothing of this range (${rule.title}).`]
        : [];
    return isImplied ? [`${rule.id}: implied by the other rules (${rule.title}).`] : [];
  });
};

/** How far an audit is: rules tried against all others, then inquiries asked. */
export interface AuditProgress {
  readonly doing: 'rules' | 'inquiries';
  readonly done: number;
  readonly of: number;
}

/**
 * The range and its rules looked at as a whole, whatever a client asks: dead items with the reason, redundant rules,
 * and sensible inquiries that find nothing. Takes seconds: every rule is tried against all others.
 */
export const audit = (
  bench: Bench,
  onProgress: (progress: AuditProgress) => void = () => undefined,
): AuditAnswer => {
  const lean = withoutRepeats(bench);
  const compiled = compileFor(neutralSystem(), lean.bench);
  const answer = compiled.engine.audit({
    ...{ mostTogether: 0, mostApart: 0, budget },
    onProgress: ({ done, of = 0 }) => onProgress({ doing: 'rules', done, of }),
  });
  const found = answer.status === 'proved' ? answer.value : answer.known;
  return {
    catalogueRevision: bench.range.revision,
    ruleRevision,
    items: bench.range.items.size,
    rules: bench.rules.length,
    deadItems: found === null ? [] : deadItems(found, compiled, lean),
    redundantRules: found === null ? [] : [...redundantRules(found, bench.rules)],
    gaps: [...gapsOf(lean.bench, { onProgress: (done, of) => onProgress({ doing: 'inquiries', done, of }) })],
  };
};
