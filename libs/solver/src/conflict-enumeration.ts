import type { Choice } from './answers.js';
import type { ConflictFinder } from './conflicts.js';
import type { Consistency } from './consistency.js';
import { lightestHittingSet } from './hitting-set.js';
import type { Ticker } from './meter.js';

export type Finding =
  /** A minimal set of choices that conflict. */
  | { readonly kind: 'conflict'; readonly choices: Choice[] }
  /** A smallest set of choices to give up: the others are consistent, and no part of it would do. */
  | { readonly kind: 'correction'; readonly choices: Choice[]; readonly weight: number };

/**
 * All minimal conflicts and all smallest corrections of inconsistent choices; corrections come by rising weight.
 * A lightest set that hits every known conflict either is a correction or leaves a new conflict behind;
 * when no further such set exists, both lists are complete (each is the set of minimal hitting sets of the other).
 * The constraints alone are consistent.
 */
export function* conflictsAndCorrections(
  task: {
    readonly choices: readonly Choice[];
    readonly weightOf: (choice: Choice) => number;
    readonly consistency: Consistency;
    readonly finder: ConflictFinder;
  },
  meter: Ticker,
): Generator<Finding, void> {
  const { choices, consistency, finder } = task;
  const weights = Float64Array.from(choices, task.weightOf);
  const numberOf = new Map(choices.map((c, i) => [c, i]));
  const sets: number[][] = [];
  const excluded: number[][] = [];
  for (;;) {
    const given = lightestHittingSet({ weights, sets, excluded }, meter);
    if (!given) return;
    let rest = choices.filter((_, i) => !given.includes(i));
    if (consistency.check(rest)) {
      excluded.push(given);
      const weight = given.reduce((sum, i) => sum + (weights[i] as number), 0);
      yield { kind: 'correction', choices: given.map((i) => choices[i] as Choice), weight };
      continue;
    }
    // Conflicts without common choices sharpen the next hitting set, so collect as many as there are.
    do {
      const conflict = finder.choices(rest);
      sets.push(conflict.map((c) => numberOf.get(c) as number));
      yield { kind: 'conflict', choices: conflict };
      rest = rest.filter((c) => !conflict.includes(c));
    } while (!consistency.check(rest));
  }
}
