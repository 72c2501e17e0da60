import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEngine } from './index.js';
import { allSolutions } from './testing/enumeration.js';
import { proved } from './testing/proved.js';
import { portsCase } from './testing/random-problem.js';
import { validValues } from './testing/valid-values.js';

describe('ports alone', () => {
  it('leave exactly the values that enumeration leaves, where propagation claims to be exact too', () => {
    fc.assert(
      fc.property(portsCase, ({ problem }) => {
        const solutions = allSolutions(problem);
        expect(proved(createEngine(problem).narrow()).valid).toEqual(validValues(problem, solutions));
      }),
      { numRuns: 1500, endOnFailure: true },
    );
  });

  it('are lacking exactly where they are not there', () => {
    fc.assert(
      fc.property(portsCase, ({ problem }) => {
        const constraints = problem.constraints.map((spec) =>
          spec.kind === 'ports' ? { ...spec, unmet: true as const } : spec,
        );
        const lacking = { ...problem, constraints };
        const solutions = allSolutions(lacking);
        const engine = createEngine(lacking);
        expect(proved(engine.count())).toBe(BigInt(solutions.length));
        expect(proved(engine.narrow()).valid).toEqual(validValues(problem, solutions));
      }),
      { numRuns: 600, endOnFailure: true },
    );
  });
});
