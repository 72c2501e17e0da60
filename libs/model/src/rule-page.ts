import type { RuleResult, Status } from './assessment.js';
import type { SourceReference } from './evidence.js';
import type { SlotName } from './slot.js';

/** What a rule says of one chosen setup. */
export interface RuleSample {
  /** The setup in a few words. */
  readonly name: string;
  /** `silent`: the rule has nothing to say about it. */
  readonly says: Status | 'silent';
  /** "1.85 of 1.90 L", where demand and limit are numbers. */
  readonly shown?: string;
  /** Sentences as they stand in an assessment; empty where it is silent. */
  readonly texts: readonly string[];
}

/** A calculation that a rule rests on. */
export interface RuleCalculation {
  readonly id: string;
  readonly title: string;
  /** Its steps in symbols, `T = P / (2 π n)`, in their order; those of one evaluation. */
  readonly formulas: readonly string[];
  readonly range: string;
  readonly source: readonly SourceReference[];
}

/** A source that rules rest on, once. */
export interface RuleSource extends SourceReference {
  /** As a table has room for it. */
  readonly short: string;
  /** In full, for the list of sources. */
  readonly full: string;
}

/** One rule for people: everything that its declaration and its cases tell. */
export interface RulePage {
  readonly id: string;
  readonly title: string;
  readonly group: string;
  readonly kind: RuleResult['kind'];
  /** What it does to a system that does not meet it. */
  readonly effect: string;
  /** How it decides, in a sentence or two: what is set against what. */
  readonly decides: readonly string[];
  /** Parts that it looks at, with what it reads of each. */
  readonly parts: readonly {
    readonly slot: SlotName;
    readonly title: string;
    /** As which side of the comparison, where there are sides. */
    readonly as?: string;
    readonly attributes: readonly string[];
  }[];
  /** Conditions of the process that it reads, in words. */
  readonly conditions: readonly string[];
  /** What "met" means; absent where the numbers say it. */
  readonly met?: string;
  /** How the margin is reckoned; absent where there is none. */
  readonly margin?: string;
  readonly calculations: readonly RuleCalculation[];
  readonly samples: readonly RuleSample[];
  /** Media that its samples name. */
  readonly media: readonly string[];
  readonly sources: readonly RuleSource[];
}
