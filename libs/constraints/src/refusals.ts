import type { Refusal, System } from '@flangewise/model';
import { slotPath } from '@flangewise/model';
import { type Bench, compileFor } from './bench.js';
import { isPossible } from './cheapest.js';
import { followsFrom } from './condition-sources.js';
import { furthest } from './furthest.js';
import type { Rule } from './rule.js';
import { type InquiryStatement, inquiryStatements, reachOf, shownLimit } from './statements.js';
import { ruleIdOf } from './tabulate.js';

/** The same inquiry, asked of one family only. */
const onlyFamily = (system: System, family: string): System => ({
  ...system,
  inquiry: { ...system.inquiry, requirements: { ...system.inquiry.requirements, families: [family] } },
});

interface Family {
  readonly name: string;
  readonly items: number;
}

const freed = (asked: System, statement: InquiryStatement, bench: Bench): string => {
  const { number, with: change } = statement;
  if (number === undefined || change === undefined) return `Without “${statement.text}” one fits.`;
  const limit = furthest(reachOf(number), (si) => isPossible(change(asked, si), bench));
  if (limit === undefined) return `Without “${statement.text}” one fits.`;
  return `One fits with ${number.easier === 'lower' ? 'at most' : 'at least'} ${shownLimit(limit, number)}.`;
};

/** A minimal set of rules that leave nothing of a family, those that read the inquiry first. */
const rulesAgainst = (asked: System, bench: Bench): readonly Rule[] => {
  const answer = compileFor(asked, bench).engine.explain();
  const found = answer.status === 'proved' ? answer.value : answer.known;
  if (found?.kind !== 'background inconsistent') return [];
  const ids = new Set(found.constraints.map(ruleIdOf));
  return bench.rules.filter(
    (rule) => ids.has(rule.id) && rule.id !== 'wish.family' && rule.conditions.length > 0,
  );
};

const quoted = (texts: readonly string[]): string => texts.map((t) => `“${t}”`).join(' and ');

const refusalOf = (system: System, family: Family, bench: Bench): Refusal | undefined => {
  const asked = onlyFamily(system, family.name);
  if (isPossible(asked, bench)) return undefined;
  const rules = rulesAgainst(asked, bench);
  const against = inquiryStatements(system).filter((statement) =>
    rules.some((rule) => rule.conditions.some((condition) => followsFrom(condition, statement))),
  );
  const single = against.find((statement) => isPossible(statement.without(asked), bench));
  const named = single === undefined ? against : [single];
  const titles = quoted(rules.map((rule) => rule.title));
  return {
    what: family.name,
    items: family.items,
    reason: `No vessel passes ${titles} with ${named.map((s) => s.text).join('; ')}.`,
    ...(single === undefined ? {} : { frees: freed(asked, single, bench) }),
  };
};

const familiesOf = (system: System, bench: Bench): readonly Family[] => {
  const { variables } = compileFor(system, bench);
  const vessel = variables.find((v) => v.path === slotPath('vessel', 0));
  const families = new Map<string, number>();
  for (const option of vessel?.options ?? []) {
    if (option?.slot === 'vessel') families.set(option.family, (families.get(option.family) ?? 0) + 1);
  }
  return [...families].map(([name, items]) => ({ name, items }));
};

/** Why each family that is not among the answers was left out, and what would let it in. */
export const refusalsOf = (system: System, bench: Bench): readonly Refusal[] =>
  familiesOf(system, bench).flatMap((family) => refusalOf(system, family, bench) ?? []);
