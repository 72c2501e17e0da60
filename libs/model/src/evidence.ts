import type { Outcome } from './outcome.js';

/** One line of a calculation that a reader can redo by hand. */
export interface Step {
  /** Symbol of the result, for instance `e`. */
  readonly symbol: string;
  /** The formula in symbols, for instance `P Di / (2 f z − P)`. */
  readonly formula: string;
  /** The formula with the numbers put in, for instance `10 × 150 / (2 × 111.3 − 10)`. */
  readonly substituted: string;
  readonly value: number | string;
  /** UCUM code of the unit in which `value` is given; `1` for a pure number. */
  readonly unit: string;
  /** A condition, a choice between formulas, or "from memory, unverified". */
  readonly note?: string;
}

/** How far a source can be trusted. Anything from memory is said to the user. */
export type Basis = 'published' | 'common practice' | 'from memory, unverified';

export interface SourceReference {
  /** Key in sources.json, with clause or equation: `en-13445-3:2021 §7.4.2`. */
  readonly citation: string;
  readonly basis: Basis;
}

/** The proof of a number: what went in, each step, where the method comes from. */
export interface Evidence {
  readonly calculation: string;
  readonly title: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly outputs: Readonly<Record<string, unknown>>;
  readonly steps: readonly Step[];
  readonly source: readonly SourceReference[];
  /** Over which inputs the method holds. */
  readonly range: string;
}

export type EvidenceOutcome = Outcome<Evidence>;
