import type { GivenRelease } from './releases.js';

/** Who issues a document, for whom, and what came before. Everything that a clock or a sign-in would tell is passed in. */
export interface Issue {
  readonly maker: string;
  readonly makerPlace?: string;
  readonly author?: string;
  /** Calendar date, `2026-11-24`. */
  readonly date?: string;
  readonly releases?: readonly GivenRelease[];
  /** Newest first. */
  readonly revisions?: readonly {
    readonly revision: string;
    readonly change: string;
    readonly by: string;
    readonly date: string;
    readonly price?: string;
  }[];
}

/** A named value of a table. */
export interface Row {
  readonly label: string;
  readonly value: string;
}

/** What the block at the foot of every sheet says. */
export interface TitleBlockView {
  readonly owner: string;
  readonly ownerPlace: string;
  readonly client: string;
  readonly clientNote: string;
  readonly title: string;
  /** Empty where nobody is named. */
  readonly drawnBy: string;
  readonly drawnOn: string;
  /** What was released and by whom; `not released` where nothing was or something still waits. */
  readonly released: string;
  readonly releasedNote: string;
  readonly document: string;
  readonly basis: string;
  readonly revision: string;
}
