import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Choice, createEngine } from './index.js';
import { allSolutions, keeps } from './testing/enumeration.js';
import { proved } from './testing/proved.js';
import { anyCase } from './testing/random-problem.js';

describe('audit', () => {
  it('finds what enumeration finds', () => {
    fc.assert(
      fc.property(anyCase, ({ problem, choices }) => {
        const found = proved(createEngine(problem).audit({ choices, mostApart: 10_000 }));
        const under = (constraints: typeof problem.constraints): Int32Array[] =>
          allSolutions(problem, constraints).filter((s) => keeps(s, choices));
        const solutions = under(problem.constraints);
        const places = problem.variables.flatMap(({ size }, variable) =>
          Array.from({ length: size }, (_, value) => ({ variable, value })),
        );
        const occurs = (p: { variable: number; value: number }): Int32Array[] =>
          solutions.filter((s) => s[p.variable] === p.value);
        expect(found.consistent).toBe(solutions.length > 0);
        expect(found.dead).toEqual(places.filter((p) => occurs(p).length === 0));
        const forced = places.filter((p) => solutions.length > 0 && occurs(p).length === solutions.length);
        expect(found.forced).toEqual(forced);
        const live = places.filter((p) => occurs(p).length > 0 && occurs(p).length < solutions.length);
        const pairs = live.flatMap((a, i) =>
          live
            .slice(i + 1)
            .filter(
              (b) => occurs(a).length === occurs(b).length && occurs(a).every((s) => occurs(b).includes(s)),
            )
            .map((b) => JSON.stringify([a, b])),
        );
        expect(found.togetherComplete).toBe(true);
        expect(found.together.map((pair) => JSON.stringify(pair)).sort()).toEqual(pairs.sort());
        const valid = places.filter((p) => occurs(p).length > 0);
        const isApart = (a: Choice, b: Choice): boolean => {
          const both = (s: Int32Array): boolean => keeps(s, [a, b]);
          if (a.variable === b.variable || solutions.some(both)) return false;
          // Each constraint alone has a combination of valid values with both.
          return problem.constraints.every((c) =>
            allSolutions(problem, [c]).some(
              (s) => both(s) && s.every((value, variable) => occurs({ variable, value }).length > 0),
            ),
          );
        };
        const partings = valid.flatMap((a, i) =>
          valid
            .slice(i + 1)
            .filter((b) => isApart(a, b))
            .map((b) => JSON.stringify([a, b])),
        );
        expect(found.apartComplete).toBe(true);
        expect(found.apart.map((pair) => JSON.stringify(pair)).sort()).toEqual(partings.sort());
        const without = (id: string): number => under(problem.constraints.filter((c) => c.id !== id)).length;
        const redundant = problem.constraints.filter((c) => without(c.id) === solutions.length);
        expect(found.redundant).toEqual(redundant.map((c) => c.id));
        const open = under([]).length;
        const idle = problem.constraints.filter((c) => under([c]).length === open);
        expect(found.neverBinding).toEqual(idle.map((c) => c.id));
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });
});
