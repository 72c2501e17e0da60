import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEngine } from './index.js';
import { allSolutions, keeps } from './testing/enumeration.js';
import { proved } from './testing/proved.js';
import { anyCase } from './testing/random-problem.js';

describe('narrow', () => {
  it('finds exactly the values that enumeration finds', () => {
    fc.assert(
      fc.property(anyCase, ({ problem, choices }) => {
        const engine = createEngine(problem);
        const solutions = allSolutions(problem);
        const { consistent, valid, free } = proved(engine.narrow({ choices, free: true }));
        expect(consistent).toBe(solutions.some((s) => keeps(s, choices)));
        problem.variables.forEach(({ size }, x) => {
          const others = choices.filter((c) => c.variable !== x);
          for (let v = 0; v < size; v++) {
            const under = (kept: typeof choices): number =>
              solutions.some((s) => s[x] === v && keeps(s, kept)) ? 1 : 0;
            expect(valid[x]![v]).toBe(under(choices));
            expect(free![x]![v]).toBe(under(others));
          }
        });
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  it('is preceded by a quicker question: whether there is any solution', () => {
    fc.assert(
      fc.property(anyCase, ({ problem, choices }) => {
        const engine = createEngine(problem);
        const wanted = allSolutions(problem).some((s) => keeps(s, choices));
        expect(proved(engine.consistent({ choices }))).toBe(wanted);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  it('never refutes a valid value by propagation, and refutes all when it says inconsistent', () => {
    fc.assert(
      fc.property(anyCase, ({ problem, choices }) => {
        const solutions = allSolutions(problem).filter((s) => keeps(s, choices));
        const { consistent, valid } = createEngine(problem).propagate({ choices });
        for (const solution of solutions) solution.forEach((v, x) => expect(valid[x]![v]).toBe(1));
        if (!consistent) expect(solutions).toEqual([]);
      }),
      { numRuns: 200, endOnFailure: true },
    );
  });

  it('gives the same answers after other questions as at first', () => {
    fc.assert(
      fc.property(anyCase, fc.array(fc.nat(), { maxLength: 8 }), ({ problem, choices }, picks) => {
        const used = createEngine(problem);
        // Choices made one by one, taken back and made anew.
        const questions = picks.map((pick) => {
          const kept = choices.filter((_, i) => ((pick >>> i) & 1) === 1);
          return kept.map((c, i) =>
            ((pick >>> (i + 8)) & 1) === 1
              ? { ...c, value: (c.value + 1) % problem.variables[c.variable]!.size }
              : c,
          );
        });
        for (const asked of [choices, ...questions, choices])
          expect(used.narrow({ choices: asked, free: true })).toEqual(
            createEngine(problem).narrow({ choices: asked, free: true }),
          );
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });
});
