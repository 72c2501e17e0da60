import type { RuleResult, SlotName, Status } from '@flangewise/model';
import { assessRule, statusOf } from '../assess-rule.js';
import type { Conditions } from '../conditions.js';
import type { Rule } from '../rule.js';
import { type PartChanges, partWith } from './parts.js';

export const conditions: Conditions = {
  media: [],
  gases: [],
  fillLimit: 0.85,
  serviceFactor: 1.25,
  vesselsAtOnce: 1,
};

/** Parts and conditions of a case, as changes of those that go together. */
export interface Setup {
  readonly parts?: PartChanges;
  readonly conditions?: Partial<Conditions>;
  /** How many vessels of it there are. */
  readonly count?: number;
  /** Other sets of the same frame. */
  readonly beside?: readonly Omit<Setup, 'beside'>[];
}

/** `silent`: the rule has nothing to say. */
export type Verdict = Status | 'silent';

export interface RuleCase extends Setup {
  readonly name: string;
  readonly is: Verdict;
  /** Part of the text that it says. */
  readonly says?: RegExp;
}

/** How a number is moved to the limit, and past it. */
export interface Edge extends Setup {
  /** Which side of the comparison the number is; the other side is what it is moved to. */
  readonly moves: 'demand' | 'limit';
  readonly to: (value: number) => Setup;
}

export interface RuleCases {
  readonly cases: readonly RuleCase[];
  /** Of rules that compare two numbers. */
  readonly edge?: Edge;
}

export type CasesOf = Readonly<Record<string, RuleCases>>;

const merged = (setups: readonly Setup[]) => ({
  parts: Object.assign({}, ...setups.map((s) => s.parts)) as PartChanges,
  conditions: Object.assign({}, ...setups.map((s) => s.conditions)) as Partial<Conditions>,
  count: setups.find((s) => s.count !== undefined)?.count ?? 1,
  beside: setups.flatMap((s) => s.beside ?? []),
});

/** What a rule says of a setup. */
export const resultsOf = (rule: Rule, ...setups: readonly Setup[]): readonly RuleResult[] => {
  const setup = merged(setups);
  const all = [setup, ...setup.beside].map((one, set) => ({
    set,
    chosen: (slot: SlotName) => partWith(slot, one.parts ?? {}),
    count: one.count ?? 1,
    conditions: { ...conditions, ...one.conditions },
  }));
  return assessRule(rule, {
    set: 0,
    chosen: (slot) => partWith(slot, setup.parts),
    conditions: { ...conditions, ...setup.conditions },
    all,
    withEvidence: true,
  });
};

export const verdictOf = (results: readonly RuleResult[]): Verdict =>
  results.length === 0 ? 'silent' : statusOf(results);

export const numberOf = (value: number | string | undefined): number => {
  if (typeof value !== 'number') throw new Error(`${String(value)} is no number`);
  return value;
};

/** Either side of the limit, as near as the rounding of the comparison tells them apart. */
const step = 1e-6;

/** What a rule says at its limit and just past it. */
export const atLimit = (rule: Rule, edge: Edge) => {
  const [base] = resultsOf(rule, edge);
  const target = numberOf(edge.moves === 'demand' ? base?.limit : base?.demand);
  const past = edge.moves === 'demand' ? target * (1 + step) : target * (1 - step);
  return {
    on: resultsOf(rule, edge, edge.to(target)),
    past: resultsOf(rule, edge, edge.to(past)),
  };
};
