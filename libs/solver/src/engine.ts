import type {
  AlternativesOptions,
  Answer,
  Audit,
  AuditOptions,
  BestOptions,
  ExplainOptions,
  Explanation,
  Narrowing,
  NarrowOptions,
  Propagation,
  QueryOptions,
  Repairs,
  RepairOptions,
  Solution,
  WhyNot,
  WhyNotOptions,
} from './answers.js';
import type { ConstraintSpec } from './problem.js';

/** Answers questions about one problem. Every answer is exact, or says that it is not proved. */
export interface Engine {
  narrow(options?: NarrowOptions): Answer<Narrowing>;
  propagate(options?: QueryOptions): Propagation;
  /** Whether any solution keeps every choice: less work than narrowing. */
  consistent(options?: QueryOptions): Answer<boolean>;
  count(options?: QueryOptions): Answer<bigint>;
  best(options: BestOptions): Answer<Solution | 'impossible'>;
  /** Every solution value (cost, delay, least margin) that no other beats, one solution each, by rising cost. */
  front(options?: QueryOptions): Answer<readonly Solution[] | 'impossible'>;
  alternatives(options: AlternativesOptions): Answer<readonly Solution[] | 'impossible'>;
  explain(options?: ExplainOptions): Answer<Explanation>;
  repair(options: RepairOptions): Answer<Repairs>;
  whyNot(options: WhyNotOptions): Answer<WhyNot>;
  audit(options?: AuditOptions): Answer<Audit>;
  /** A new engine in which the constraints of the same ids are replaced; only these are compiled again. */
  replaceConstraints(specs: readonly ConstraintSpec[]): Engine;
}
