import type { Choice, Conflict } from './answers.js';
import type { Consistency } from './consistency.js';
import type { Core } from './core.js';
import { quickXplain } from './quick-xplain.js';

/** Finds minimal conflicts. */
export class ConflictFinder {
  private readonly everyConstraint: readonly number[];

  constructor(
    private readonly core: Core,
    private readonly consistency: Consistency,
  ) {
    this.everyConstraint = core.constraints.map((_, i) => i);
  }

  /**
   * A minimal subset of inconsistent choices that conflicts under all constraints, with `fixed` kept in any case.
   * Empty where `fixed` alone conflicts.
   */
  choices(candidates: readonly Choice[], fixed: readonly Choice[] = []): Choice[] {
    const cause = this.consistency.cause([...fixed, ...candidates]);
    const relevant = cause ? candidates.filter((c) => cause.choices.includes(c)) : candidates;
    return quickXplain(relevant, (subset) => this.consistency.check([...fixed, ...subset]));
  }

  /** A minimal set of constraints that conflicts with choices that are inconsistent under all of them. */
  constraints(choices: readonly Choice[]): string[] {
    const candidates = this.consistency.cause(choices)?.constraints ?? this.everyConstraint;
    const needed = quickXplain(candidates, (subset) => this.consistency.check(choices, subset));
    return needed.map((c) => this.core.constraints[c]?.id as string);
  }

  /** Dropping any choice or constraint of the result makes the rest consistent. */
  conflict(candidates: readonly Choice[]): Conflict {
    const choices = this.choices(candidates);
    return { choices, constraints: this.constraints(choices) };
  }
}
