import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Choice, Conflict } from './answers.js';
import { createEngine } from './index.js';
import { allSolutions, keeps } from './testing/enumeration.js';
import { proved } from './testing/proved.js';
import type { Case } from './testing/random-problem.js';
import { anyCase } from './testing/random-problem.js';

const minus = <T>(list: readonly T[], item: T): T[] => list.filter((other) => other !== item);

/** Whether some choices and the constraints of some ids have a solution together. */
function consistent({ problem }: Case, choices: readonly Choice[], ids?: readonly string[]): boolean {
  const constraints = problem.constraints.filter((c) => !ids || ids.includes(c.id));
  return allSolutions(problem, constraints).some((s) => keeps(s, choices));
}

/** Inconsistent, and consistent without any one of its members; `fixed` stays. */
function expectMinimal(drawn: Case, conflict: Conflict, fixed: readonly Choice[] = []): void {
  const { choices, constraints } = conflict;
  expect(consistent(drawn, [...fixed, ...choices], constraints)).toBe(false);
  for (const choice of choices)
    expect(consistent(drawn, [...fixed, ...minus(choices, choice)], constraints)).toBe(true);
  for (const id of constraints)
    expect(consistent(drawn, [...fixed, ...choices], minus(constraints, id))).toBe(true);
}

const subsets = <T>(list: readonly T[]): T[][] =>
  list.reduce<T[][]>((all, item) => [...all, ...all.map((s) => [...s, item])], [[]]);

const names = (choices: readonly { variable: number }[]): string =>
  choices
    .map((c) => c.variable)
    .sort()
    .join();

describe('explain', () => {
  it('gives a minimal conflict exactly where there is one', () => {
    fc.assert(
      fc.property(anyCase, (drawn) => {
        const { problem, choices } = drawn;
        const found = proved(createEngine(problem).explain({ choices }));
        const isConsistent = consistent(drawn, choices);
        expect(found.kind === 'consistent').toBe(isConsistent);
        if (found.kind === 'background inconsistent') {
          expect(consistent(drawn, [])).toBe(false);
          expectMinimal(drawn, { choices: [], constraints: found.constraints });
        }
        if (found.kind === 'conflict') {
          expect(consistent(drawn, [])).toBe(true);
          expect(found.conflicts).toHaveLength(1);
          expectMinimal(drawn, found.conflicts[0]!);
        }
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  it('gives every minimal set of conflicting choices', () => {
    fc.assert(
      fc.property(anyCase, (drawn) => {
        const { problem, choices } = drawn;
        const found = proved(createEngine(problem).explain({ choices, all: true }));
        if (found.kind !== 'conflict') return;
        const wanted = subsets(choices).filter(
          (s) => !consistent(drawn, s) && s.every((c) => consistent(drawn, minus(s, c))),
        );
        expect(found.complete).toBe(true);
        expect(found.conflicts.map((c) => names(c.choices)).sort()).toEqual(wanted.map(names).sort());
        for (const conflict of found.conflicts) expectMinimal(drawn, conflict);
        const first = proved(createEngine(problem).explain({ choices, all: true, most: 1 }));
        expect(first).toMatchObject({ kind: 'conflict', complete: found.conflicts.length === 1 });
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe('whyNot', () => {
  it('gives the minimal conflict of an option with the other choices', () => {
    fc.assert(
      fc.property(anyCase, fc.nat(), fc.nat(), (drawn, x, v) => {
        const { problem, choices } = drawn;
        const variable = x % problem.variables.length;
        const option = { variable, value: v % problem.variables[variable]!.size };
        const others = choices.filter((c) => c.variable !== variable);
        const found = proved(createEngine(problem).whyNot({ choices, ...option }));
        expect(found.kind === 'possible').toBe(consistent(drawn, [...others, option]));
        if (found.kind === 'possible') return;
        for (const choice of found.choices) expect(others).toContain(choice);
        expectMinimal(drawn, found, [option]);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe('repair', () => {
  it.each(['number', 'priority', 'cost'] as const)('gives every smallest change, ranked by %s', (by) => {
    fc.assert(
      fc.property(anyCase, (drawn) => {
        const { problem, choices } = drawn;
        const engine = createEngine(problem);
        const found = proved(engine.repair({ choices, by, most: 100 }));
        expect(found.kind === 'consistent').toBe(consistent(drawn, choices));
        if (found.kind === 'background inconsistent')
          expectMinimal(drawn, { choices: [], constraints: found.constraints });
        if (found.kind !== 'repairs') return;
        const without = (given: readonly Choice[]): Choice[] => choices.filter((c) => !given.includes(c));
        const wanted = subsets(choices).filter(
          (s) => consistent(drawn, without(s)) && s.every((c) => !consistent(drawn, without(minus(s, c)))),
        );
        expect(found.complete).toBe(true);
        expect(found.repairs.map((r) => names(r.changes)).sort()).toEqual(wanted.map(names).sort());
        for (const { changes, cost, rank } of found.repairs) {
          const given = choices.filter((c) => changes.some((d) => d.variable === c.variable));
          const kept = without(given);
          for (const { variable, from, to } of changes) {
            expect(to).not.toBe(from);
            expect(choices).toContainEqual(expect.objectContaining({ variable, value: from }));
          }
          const moved = changes.map(({ variable, to }) => ({ variable, value: to }));
          const price = (s: Int32Array): number =>
            problem.variables.reduce((sum, v, x) => sum + (v.cost?.[s[x]!] ?? 0), 0);
          const cheapest = (under: readonly Choice[]): number =>
            Math.min(
              ...allSolutions(problem)
                .filter((s) => keeps(s, under))
                .map(price),
            );
          expect(cost).toBe(cheapest(kept));
          expect(cheapest([...kept, ...moved])).toBe(cost);
          const priority = given.reduce((sum, c) => sum + (c.priority ?? 1), 0);
          expect(rank).toBe({ number: given.length, priority, cost }[by]);
        }
        const ranks = found.repairs.map((r) => r.rank);
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
        const first = proved(engine.repair({ choices, by, most: 1 }));
        expect(first).toMatchObject({ repairs: [{ rank: ranks[0] }], complete: ranks.length === 1 });
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});
