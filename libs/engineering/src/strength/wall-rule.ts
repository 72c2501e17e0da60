import type { Outcome } from '@flangewise/model';

/** One formula of a code for a round shell under internal pressure. */
export interface WallBranch {
  readonly method: 'thin wall' | 'thick wall';
  readonly clause: string;
  /** Required thickness from the inner diameter `D_i`, and from the outer one `D_e`. */
  readonly thicknessFromInner: string;
  readonly thicknessFromOuter: string;
  /** Permissible pressure from thickness `e` and inner diameter `D_i`. */
  readonly pressure: string;
  readonly note?: string;
}

export interface WallAnswer {
  readonly value: number;
  readonly branch: WallBranch;
}

/** Where the last formula of a code ends, and what to do then. */
export interface WallLimit {
  /** The highest q, or the highest k, that the rule still answers. */
  readonly highest: number;
  readonly advice: string;
}

/**
 * The rule of a code for a shell, in pure numbers: `loadRatio` q = P / (f z) and `diameterRatio` k = D_e / D_i.
 * The two are generalised inverses of one another, and both grow with their argument.
 */
export interface WallRule {
  /** k that carries q. Whether a shell counts as a small tube may depend on the k that it needs. */
  diameterRatio(
    loadRatio: number,
    isSmallTube: (diameterRatio: number) => boolean,
  ): Outcome<WallAnswer, WallLimit>;
  /** q that k carries. */
  loadRatio(diameterRatio: number, isSmallTube: boolean): Outcome<WallAnswer, WallLimit>;
}

/** Limits are met within rounding: a thickness of exactly the limit is inside. */
export const isAtMost = (value: number, limit: number): boolean => value <= limit * (1 + 1e-12);

/** What the evidence says of a branch. */
export const branchNote = ({ clause, note }: WallBranch): string =>
  note === undefined ? clause : `${clause}: ${note}`;
