import { describe, expect, it } from 'vitest';
import type { Answer, Choice, Progress, QueryOptions } from './answers.js';
import type { Engine } from './engine.js';
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

/** Every query of the engine, with choices that conflict where it is about conflicts. */
const queries: [string, (engine: Engine, options: QueryOptions) => Answer<unknown>][] = [
  ['narrow', (engine, options) => engine.narrow({ ...options, free: true })],
  ['count', (engine, options) => engine.count(options)],
  ['best by cost', (engine, options) => engine.best({ ...options, objective: { kind: 'cost' } })],
  ['best by delay', (engine, options) => engine.best({ ...options, objective: { kind: 'delay' } })],
  ['best by margin', (engine, options) => engine.best({ ...options, objective: { kind: 'margin' } })],
  [
    'best by a mix',
    (engine, options) => engine.best({ ...options, objective: { kind: 'mix', cost: 1, delay: 9 } }),
  ],
  ['front', (engine, options) => engine.front(options)],
  ['alternatives', (engine, options) => engine.alternatives({ ...options, k: 3, differIn: [2, 3] })],
  ['explain', (engine, options) => engine.explain({ ...options, choices: randomChoices(), all: true })],
  ['repair', (engine, options) => engine.repair({ ...options, choices: randomChoices(), by: 'cost' })],
  [
    'whyNot',
    (engine, options) => engine.whyNot({ ...options, choices: randomChoices(), variable: 4, value: 0 }),
  ],
  ['audit', (engine, options) => engine.audit(options)],
];

describe.each(queries)('%s', (_, ask) => {
  it('stops when it is cancelled, and then claims nothing', () => {
    const engine = createEngine(problem);
    expect(ask(engine, { signal: { aborted: true } })).toEqual({
      status: 'not proved',
      known: null,
      reason: 'cancelled',
    });
    for (const reads of [1, 10, 100, 1000]) {
      const answer = ask(engine, { signal: raisedAfter(reads), budget: { nodes: 2000 } });
      // The planted systems are solutions, so "impossible" would be wrong.
      expect(answer.status === 'proved' ? answer.value : answer.known).not.toBe('impossible');
      if (answer.status === 'not proved') expect(['cancelled', 'budget']).toContain(answer.reason);
    }
  });

  it('says how far it is', () => {
    const seen: Progress[] = [];
    ask(createEngine(problem), { onProgress: (progress) => seen.push(progress), budget: { nodes: 500 } });
    expect(seen.length).toBeGreaterThan(0);
    const nodes = seen.map((p) => p.nodes);
    expect(nodes).toEqual([...nodes].sort((a, b) => a - b));
  });
});

describe('a query that takes too long', () => {
  // Pigeons: 22 variables that all differ, of 21 values each. No solution, but propagation does not see it and no diagram fits.
  const pigeons = Array.from({ length: 22 }, (_, i) => ({ id: `pigeon${String(i)}`, size: 21 }));
  const different = pigeons.flatMap((_, a) =>
    pigeons.slice(a + 1).map((__, i) => ({
      ...{ kind: 'table' as const, id: `${String(a)}-${String(a + 1 + i)}`, scope: [a, a + 1 + i] },
      allowed: Uint8Array.from({ length: 441 }, (___, t) => (Math.floor(t / 21) === t % 21 ? 0 : 1)),
    })),
  );
  const engine = createEngine({ variables: pigeons, constraints: different });

  it.each(queries.filter(([name]) => !['explain', 'repair', 'whyNot'].includes(name)))(
    'is not answered by "impossible": %s',
    (name, ask) => {
      const wide = name === 'alternatives' ? { budget: { nodes: 3 } } : { budget: { nodes: 5 } };
      const answer = ask(engine, wide);
      expect(answer).toMatchObject({ status: 'not proved', reason: 'budget' });
      expect(answer.status === 'not proved' ? answer.known : null).not.toBe('impossible');
    },
  );
});
