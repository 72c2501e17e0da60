import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Objective, Solution } from './answers.js';
import { createEngine } from './index.js';
import { allSolutions, keeps, measured } from './testing/enumeration.js';
import { proved } from './testing/proved.js';
import type { Case } from './testing/random-problem.js';
import { anyCase } from './testing/random-problem.js';

const measuredSolutions = ({ problem, choices }: Case): Solution[] =>
  allSolutions(problem)
    .filter((s) => keeps(s, choices))
    .map((s) => measured(problem, s));

const rank: Record<Objective['kind'], (s: Solution) => number> = {
  cost: (s) => s.cost,
  delay: (s) => s.delay,
  margin: (s) => -s.margin,
  mix: (s) => 2 * s.cost + 3 * s.delay,
};

const objectives: Objective[] = [
  { kind: 'cost' },
  { kind: 'delay' },
  { kind: 'margin' },
  { kind: 'mix', cost: 2, delay: 3 },
];

describe('best', () => {
  it.each(objectives)('finds the optimum that enumeration finds: $kind', (objective) => {
    fc.assert(
      fc.property(anyCase, (drawn) => {
        const { problem, choices } = drawn;
        const found = proved(createEngine(problem).best({ choices, objective }));
        const all = measuredSolutions(drawn);
        if (found === 'impossible') {
          expect(all).toEqual([]);
          return;
        }
        const of = rank[objective.kind];
        expect(of(found)).toBe(Math.min(...all.map(of)));
        const equals = all.filter((s) => of(s) === of(found));
        // Among the fastest, or those with the largest margin, the cheapest is given.
        if (objective.kind === 'delay' || objective.kind === 'margin')
          expect(found.cost).toBe(Math.min(...equals.map((s) => s.cost)));
        expect(found).toEqual(measured(problem, found.solution));
        expect(equals.map((s) => s.solution)).toContainEqual(found.solution);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  it('gives the same solution whatever was asked before', () => {
    fc.assert(
      fc.property(anyCase, ({ problem, choices }) => {
        const fresh = createEngine(problem);
        const used = createEngine(problem);
        used.narrow({ free: true });
        used.explain({ choices });
        expect(used.best({ choices, objective: { kind: 'cost' } })).toEqual(
          fresh.best({ choices, objective: { kind: 'cost' } }),
        );
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe('count', () => {
  it('counts as enumeration does', () => {
    fc.assert(
      fc.property(anyCase, (drawn) => {
        const { problem, choices } = drawn;
        expect(proved(createEngine(problem).count({ choices }))).toBe(
          BigInt(measuredSolutions(drawn).length),
        );
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe('front', () => {
  it('is the set of values that no solution beats', () => {
    const key = (s: Solution): string => `${String(s.cost)} ${String(s.delay)} ${String(s.margin)}`;
    fc.assert(
      fc.property(anyCase, (drawn) => {
        const { problem, choices } = drawn;
        const all = measuredSolutions(drawn);
        const found = proved(createEngine(problem).front({ choices }));
        if (found === 'impossible') {
          expect(all).toEqual([]);
          return;
        }
        const beats = (a: Solution, b: Solution): boolean =>
          a.cost <= b.cost && a.delay <= b.delay && a.margin >= b.margin && key(a) !== key(b);
        const wanted = new Set(all.filter((s) => !all.some((t) => beats(t, s))).map(key));
        expect(found.map(key).sort()).toEqual([...wanted].sort());
        for (const s of found) expect(all.map((t) => t.solution)).toContainEqual(s.solution);
        expect(found.map((s) => s.cost)).toEqual(found.map((s) => s.cost).sort((a, b) => a - b));
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});

describe('alternatives', () => {
  it.each(objectives)('are the best of each combination: $kind', (objective) => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 5 }), fc.nat(), (drawn, k, mask) => {
        const { problem, choices } = drawn;
        const differIn = problem.variables.map((_, x) => x).filter((x) => ((mask >>> x) & 1) === 1);
        const found = proved(createEngine(problem).alternatives({ choices, k, differIn, objective }));
        const all = measuredSolutions(drawn);
        if (found === 'impossible') {
          expect(all).toEqual([]);
          return;
        }
        const of = rank[objective.kind];
        const combination = (s: Solution): string => differIn.map((x) => s.solution[x]).join();
        const bestOf = new Map<string, number>();
        for (const s of all)
          bestOf.set(combination(s), Math.min(of(s), bestOf.get(combination(s)) ?? Infinity));
        const wanted = [...bestOf.values()].sort((a, b) => a - b).slice(0, k);
        expect(found.map(of)).toEqual(wanted);
        expect(new Set(found.map(combination)).size).toBe(found.length);
        for (const s of found) expect(all.map((t) => t.solution)).toContainEqual(s.solution);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});
