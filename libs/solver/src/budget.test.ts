import { describe, expect, it } from 'vitest';
import type { Choice } from './answers.js';
import { createEngine } from './index.js';
import { clusteredProblem, randomFrom } from './testing/clustered-problem.js';
import { proved } from './testing/proved.js';

const problem = clusteredProblem({ seed: 5, sets: 1, items: 250 });

function randomChoices(): Choice[] {
  const random = randomFrom(3);
  return problem.variables.map(({ size }, variable) => ({ variable, value: Math.floor(random() * size) }));
}

/** A signal that is raised after it was read a number of times. */
function raisedAfter(reads: number): { readonly aborted: boolean } {
  let left = reads;
  return {
    get aborted() {
      return --left < 0;
    },
  };
}

describe('a stopped query', () => {
  it('of narrow has shown some values valid, refuted some, and says which are undecided', () => {
    const exact = proved(createEngine(problem).narrow());
    const engine = createEngine(problem);
    let sawPartial = false;
    for (const reads of [1, 300, 500, 600, 700, 800, 900, 1000]) {
      const answer = engine.narrow({ signal: raisedAfter(reads) });
      if (answer.status === 'proved') break;
      expect(answer.reason).toBe('cancelled');
      if (!answer.known) continue;
      sawPartial = true;
      const { valid, undecided } = answer.known;
      exact.valid.forEach((flags, x) =>
        flags.forEach((flag, v) => {
          if (valid[x]![v] === 1) expect(flag).toBe(1);
          if (flag === 1) expect(valid[x]![v]! + undecided![x]![v]!).toBe(1);
        }),
      );
    }
    expect(sawPartial || engine.narrow().status === 'proved').toBe(true);
    expect(proved(engine.narrow()).valid).toEqual(exact.valid);
  });

  it('of best never says impossible, and goes on to the same optimum when asked again', () => {
    const optimum = proved(createEngine(problem).best({ objective: { kind: 'cost' } }));
    if (optimum === 'impossible') throw new Error('the problem has solutions');
    const engine = createEngine(problem);
    for (const nodes of [0, 1, 2, 4, 8]) {
      const answer = engine.best({ objective: { kind: 'cost' }, budget: { nodes } });
      if (answer.status === 'proved') expect(answer.value).toEqual(optimum);
      else {
        expect(answer.reason).toBe('budget');
        expect(answer.known).not.toBe('impossible');
        if (answer.known && answer.known !== 'impossible')
          expect(answer.known.cost).toBeGreaterThanOrEqual(optimum.cost);
      }
    }
    expect(engine.best({ objective: { kind: 'cost' }, budget: { nodes: 0 } }).status).toBe('not proved');
    expect(proved(engine.best({ objective: { kind: 'cost' } }))).toEqual(optimum);
  });

  it('of repair offers a repair that works', () => {
    const choices = randomChoices();
    const answer = createEngine(problem).repair({ choices, by: 'number', budget: { nodes: 3000 } });
    const repairs = answer.status === 'proved' ? answer.value : answer.known;
    if (repairs?.kind !== 'repairs') throw new Error('a repair is expected');
    const [first] = repairs.repairs;
    const repaired = choices.map((c) => {
      const change = first!.changes.find((d) => d.variable === c.variable);
      return change ? { ...c, value: change.to } : c;
    });
    expect(proved(createEngine(problem).explain({ choices: repaired }))).toEqual({ kind: 'consistent' });
  });

  it('of count says not proved', () => {
    expect(createEngine(problem).count({ budget: { nodes: 0 } })).toEqual({
      status: 'not proved',
      known: null,
      reason: 'budget',
    });
  });

  it('reports progress', () => {
    const steps: number[] = [];
    createEngine(problem).audit({ onProgress: ({ done }) => steps.push(done), budget: { nodes: 200 } });
    createEngine(problem).alternatives({ k: 3, differIn: [2], onProgress: ({ done }) => steps.push(done) });
    expect(steps.length).toBeGreaterThan(2);
  });
});
