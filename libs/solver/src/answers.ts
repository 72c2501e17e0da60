/** What a person has decided: this variable takes this value. */
export interface Choice {
  readonly variable: number;
  readonly value: number;
  /** How much it is worth keeping, above 0; used by `repair` by priority. Omitted: 1. */
  readonly priority?: number;
}

export interface Progress {
  /** Search nodes so far. */
  readonly nodes: number;
  /** Steps done, such as solutions found or constraints looked at, where the query has steps. */
  readonly done: number;
  readonly of?: number;
}

export interface QueryOptions {
  /** At most one for each variable. */
  readonly choices?: readonly Choice[];
  /** Read from time to time; a getter may look at shared memory or a deadline. */
  readonly signal?: { readonly aborted: boolean };
  readonly onProgress?: (progress: Progress) => void;
  /** Largest number of search nodes; the same questions in the same order stop at the same place on every machine. */
  readonly budget?: { readonly nodes: number };
}

/** Proved, or not: then what is known so far, and why it stopped. A stopped query never says "impossible". */
export type Answer<T> =
  | { readonly status: 'proved'; readonly value: T }
  | { readonly status: 'not proved'; readonly known: T | null; readonly reason: 'cancelled' | 'budget' };

export interface Solution {
  /** Value of each variable. */
  readonly solution: Int32Array;
  readonly cost: number;
  readonly delay: number;
  /** Least margin over the constraints that declare one; +Infinity where none bounds it. */
  readonly margin: number;
}

export type Objective =
  | { readonly kind: 'cost' }
  | { readonly kind: 'delay' }
  /** The largest least margin. */
  | { readonly kind: 'margin' }
  /** Least cost·(total cost) + delay·(total delay); both weights ≥ 0. */
  | { readonly kind: 'mix'; readonly cost: number; readonly delay: number };

export interface NarrowOptions extends QueryOptions {
  /** Also answer, for each chosen variable, which values are valid when only its own choice is dropped. */
  readonly free?: boolean;
}

export interface Narrowing {
  /** Whether all choices together lead to a whole solution. */
  readonly consistent: boolean;
  /** `valid[x][v]` = 1: value v of variable x is part of a solution that keeps every choice. All 0 when not consistent. */
  readonly valid: readonly Uint8Array[];
  /** With `free`: the same, but dropping the choice of x itself. Equals `valid` where x is not chosen. */
  readonly free?: readonly Uint8Array[];
  /** Only in an answer that is not proved: values neither shown valid nor refuted yet (0 in `valid`). */
  readonly undecided?: readonly Uint8Array[];
}

/** What local reasoning leaves: a value marked 0 is certainly invalid, a value marked 1 may still lead nowhere. */
export interface Propagation {
  readonly exact: false;
  /** `false`: certainly inconsistent; `true`: not refuted by local reasoning. */
  readonly consistent: boolean;
  readonly valid: readonly Uint8Array[];
}

/** Dropping any choice or any constraint of a conflict leaves a consistent rest. */
export interface Conflict {
  readonly choices: readonly Choice[];
  readonly constraints: readonly string[];
}

export interface ExplainOptions extends QueryOptions {
  /** Every minimal set of conflicting choices, not only one. */
  readonly all?: boolean;
  /** At most this many conflicts. */
  readonly most?: number;
}

export type Explanation =
  | { readonly kind: 'consistent' }
  /** The constraints alone admit nothing; a minimal set of them. */
  | { readonly kind: 'background inconsistent'; readonly constraints: readonly string[] }
  /** `complete`: there is no further minimal set of conflicting choices. */
  | { readonly kind: 'conflict'; readonly conflicts: readonly Conflict[]; readonly complete: boolean };

export interface RepairOptions extends QueryOptions {
  /**
   * Every repair is a smallest set: no part of it would do. They are ranked by the number of changed choices,
   * by the sum of the priorities given up, or by the cost of the cheapest solution that follows.
   */
  readonly by: 'number' | 'cost' | 'priority';
  /** At most this many repairs, best first. Omitted: 5. */
  readonly most?: number;
}

export interface Change {
  readonly variable: number;
  readonly from: number;
  readonly to: number;
}

export interface Repair {
  readonly changes: readonly Change[];
  /** Cost of the cheapest solution that keeps the other choices; `to` are its values. */
  readonly cost: number;
  /** What it was ranked by. */
  readonly rank: number;
}

export type Repairs =
  | { readonly kind: 'consistent' }
  | { readonly kind: 'background inconsistent'; readonly constraints: readonly string[] }
  /** `complete`: there is no further smallest set of changes. */
  | { readonly kind: 'repairs'; readonly repairs: readonly Repair[]; readonly complete: boolean };

export interface BestOptions extends QueryOptions {
  readonly objective: Objective;
}

export interface AlternativesOptions extends QueryOptions {
  /** How many. */
  readonly k: number;
  /** Any two alternatives differ in at least one of these variables. */
  readonly differIn: readonly number[];
  /** Omitted: cost. */
  readonly objective?: Objective;
}

export interface WhyNotOptions extends QueryOptions {
  readonly variable: number;
  readonly value: number;
}

/** The conflict of one option with the choices of the other variables; no choices: the option is dead on its own. */
export type WhyNot = { readonly kind: 'possible' } | ({ readonly kind: 'conflict' } & Conflict);

export interface Place {
  readonly variable: number;
  readonly value: number;
}

export interface AuditOptions extends QueryOptions {
  /** At most this many pairs of values that only occur together. Omitted: 100. */
  readonly mostTogether?: number;
  /** At most this many pairs of values that never occur together. Omitted: 100. */
  readonly mostApart?: number;
}

/** Findings about the problem as a whole, under the given choices (usually none). */
export interface Audit {
  readonly consistent: boolean;
  /** Values that are part of no solution. */
  readonly dead: readonly Place[];
  /** Variables with one valid value. */
  readonly forced: readonly Place[];
  /** Pairs of which no solution has only one; forced values are left out. */
  readonly together: readonly (readonly [Place, Place])[];
  /** `together` lists every such pair. */
  readonly togetherComplete: boolean;
  /** Pairs of valid values of which no solution has both, though no constraint alone forbids it. */
  readonly apart: readonly (readonly [Place, Place])[];
  /** `apart` lists every such pair. */
  readonly apartComplete: boolean;
  /** Each is implied by all the other constraints together (two equal constraints are both named). */
  readonly redundant: readonly string[];
  /** Met by every combination of values, whatever the other constraints say. */
  readonly neverBinding: readonly string[];
}
