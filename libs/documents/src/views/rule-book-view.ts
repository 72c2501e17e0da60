import type { RulePage } from '@flangewise/model';
import { type RuleIndex, ruleIndexesOf } from './rule-index.js';

export interface NumberedRule extends RulePage {
  /** Its number in the book, from 1. */
  readonly number: number;
}

/** The book of rules as it is printed. */
export interface RuleBookView {
  readonly maker: string;
  readonly revision: string;
  readonly say: string;
  readonly rules: readonly NumberedRule[];
  readonly indexes: readonly RuleIndex[];
}

export interface RuleBookInput {
  readonly maker: string;
  /** State of the rules, as offers carry it. */
  readonly revision: string;
  readonly pages: readonly RulePage[];
}

const kinds = { hard: 'that refuse', caution: 'that caution', advice: 'that advise' } as const;

const countText = (pages: readonly RulePage[]): string =>
  (['hard', 'caution', 'advice'] as const)
    .map((kind) => `${String(pages.filter((page) => page.kind === kind).length)} ${kinds[kind]}`)
    .join(', ');

export const ruleBookViewOf = ({ maker, revision, pages }: RuleBookInput): RuleBookView => ({
  maker,
  revision,
  say: `${String(pages.length)} rules: ${countText(pages)}. Each page follows from the rule as it is in force; what it says is what it said of its test cases.`,
  rules: pages.map((page, i) => ({ ...page, number: i + 1 })),
  indexes: ruleIndexesOf(pages),
});
