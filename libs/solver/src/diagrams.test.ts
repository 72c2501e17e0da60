import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Choice } from './answers.js';
import { BoxPool } from './box-pool.js';
import type { CheapestTask } from './cheapest.js';
import { cheapest } from './cheapest.js';
import { compileDiagram } from './compile-diagram.js';
import type { Core } from './core.js';
import { compile } from './core.js';
import { countByDiagram } from './diagram-count.js';
import { DiagramSearch } from './diagram-search.js';
import { showByDiagram } from './diagram-witnesses.js';
import type { Diagrams } from './diagrams.js';
import { groupCosts, valuesOf } from './group-costs.js';
import type { Problem } from './problem.js';
import { narrowState } from './narrow-state.js';
import { allowChoices, enter } from './question.js';
import { hasGroup } from './search.js';
import { clusteredProblem, randomFrom } from './testing/clustered-problem.js';
import { allSolutions, keeps, measured } from './testing/enumeration.js';
import { knottedCase, mediumCase, smallCase } from './testing/random-problem.js';
import { Witnesses } from './witnesses.js';

const free = { tick: () => undefined, check: () => undefined };

/** A core that is not refuted at once; the property is skipped otherwise. */
function coreOf(problem: Problem): Core & { root: Uint32Array } {
  const core = compile(problem);
  fc.pre(core.root !== null);
  return core as Core & { root: Uint32Array };
}

const everything = (core: Core) => core.sizes.map(() => null);

function taskOf(core: Core & { root: Uint32Array }, diagrams: Diagrams | null = null): CheapestTask {
  const { cost } = groupCosts(core, everything(core));
  return { network: core.network, state: Uint32Array.from(core.root), cost, diagrams };
}

const leastCost = (problem: Problem): number =>
  Math.min(...allSolutions(problem).map((s) => measured(problem, s).cost));

/** Group by group, whether it is part of a solution. */
const validGroups = (core: Core, choices: readonly Choice[] = []): Set<string> =>
  new Set(
    allSolutions(core.problem)
      .filter((s) => keeps(s, choices))
      .flatMap((s) => Array.from(s, (v, x) => `${String(x)}:${String(core.layout.groupOf[x]![v])}`)),
  );

// Few tuples leave most constraints out of the diagram, many take all in.
const tuples = fc.constantFrom(1, 4, 12, 1_000_000);

describe.each([
  ['small', smallCase],
  ['medium', mediumCase],
  ['knotted', knottedCase],
])('%s problems', (_, cases) => {
  const runs = { numRuns: 100, endOnFailure: true };

  it('have the same optimum by diagram, whatever it leaves out', () => {
    fc.assert(
      fc.property(cases, tuples, ({ problem }, mostTuples) => {
        const core = coreOf(problem);
        const known = compileDiagram(
          { network: core.network, state: core.root, mostWork: 1_000_000, mostTuples },
          free,
        )!;
        const found = new DiagramSearch(taskOf(core), known, free).run();
        expect(found?.cost ?? Infinity).toBe(leastCost(problem));
        if (!found) return;
        const values = valuesOf(groupCosts(core, everything(core)), found.groups);
        expect(core.constraints.every((c) => c.isSatisfied(values))).toBe(true);
        expect(measured(problem, values).cost).toBe(found.cost);
      }),
      runs,
    );
  });

  it('have the same optimum by search alone', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 0, max: 30 }), ({ problem }, below) => {
        const core = coreOf(problem);
        const wanted = leastCost(problem);
        expect(cheapest(taskOf(core), free)?.cost ?? Infinity).toBe(wanted);
        const cheaper = cheapest({ ...taskOf(core), below }, free);
        expect(cheaper?.cost ?? null).toBe(wanted < below ? wanted : null);
      }),
      runs,
    );
  });

  it('have as many solutions by diagram, where it can count them', () => {
    let counted = 0;
    fc.assert(
      fc.property(cases, tuples, ({ problem }, mostTuples) => {
        const core = coreOf(problem);
        const { network } = core;
        const known = compileDiagram({ network, state: core.root, mostWork: 1_000_000, mostTuples }, free)!;
        network.state = core.root;
        const multiplicity = core.layout.members.map((groups) => groups.map((g) => g.length));
        const found = countByDiagram({ network, known, multiplicity }, free);
        if (found === null) return;
        counted++;
        // Variables outside the diagram are fixed to one group.
        const outside = core.layout.members.reduce((product, groups, x) => {
          const group = groups.find((_, g) => hasGroup(network, x, g));
          return known.covers[x] === 1 ? product : product * (group?.length ?? 0);
        }, 1);
        expect(found * BigInt(outside)).toBe(BigInt(allSolutions(problem).length));
      }),
      runs,
    );
    expect(counted).toBeGreaterThan(30);
  });

  it('show by diagram only what is valid, and drop only what is not', () => {
    fc.assert(
      fc.property(cases, tuples, ({ problem }, mostTuples) => {
        const core = coreOf(problem);
        const { network } = core;
        const known = compileDiagram({ network, state: core.root, mostWork: 1_000_000, mostTuples }, free)!;
        const valid = validGroups(core);
        const witnesses = new Witnesses(core.layout);
        network.state = Uint32Array.from(core.root);
        const shown = showByDiagram({ network, known, witnesses });
        if (!shown) {
          expect(valid.size).toBe(0);
          return;
        }
        core.layout.size.forEach((size, x) => {
          for (let g = 0; g < size; g++) {
            const isValid = valid.has(`${String(x)}:${String(g)}`);
            if (isValid) expect(hasGroup(network, x, g)).toBe(true);
            if (witnesses.has(x, g)) expect(isValid).toBe(true);
          }
        });
      }),
      runs,
    );
  });

  it('are narrowed exactly by search alone, whatever was asked before', () => {
    fc.assert(
      fc.property(cases, ({ problem, choices }) => {
        const core = coreOf(problem);
        const { network } = core;
        const boxes = new BoxPool();
        // Later questions start from the boxes of the earlier ones.
        for (const kept of [[], [], choices.slice(0, 1), choices, []]) {
          const state = enter(core, allowChoices(core, kept));
          const task = state && { network, state, boxes, diagrams: null };
          const narrowed = task && narrowState(task, free, () => undefined);
          const valid = validGroups(core, kept);
          if (!narrowed) {
            expect(valid.size).toBe(0);
            continue;
          }
          network.state = narrowed.state;
          core.layout.size.forEach((size, x) => {
            for (let g = 0; g < size; g++)
              expect(hasGroup(network, x, g)).toBe(valid.has(`${String(x)}:${String(g)}`));
          });
        }
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });
});

describe('search alone', () => {
  it('refutes a value that misses a limit by less than bounds can see', () => {
    const weights = [Float64Array.of(0, 0.5), Float64Array.of(0, 0.5 + 2e-11)];
    const core = compile({
      variables: [0, 1].map((i) => ({ id: `x${String(i)}`, size: 2 })),
      constraints: [
        {
          ...{ kind: 'sum', id: 'sum', limit: { constant: 1 } },
          terms: weights.map((list, variable) => ({ variable, weights: list })),
        },
      ],
    });
    const { network } = core;
    const state = enter(core, allowChoices(core, [{ variable: 0, value: 1 }]))!;
    const narrowed = narrowState(
      { network, state, boxes: new BoxPool(), diagrams: null },
      free,
      () => undefined,
    );
    network.state = narrowed!.state;
    expect([0, 1].map((g) => hasGroup(network, 1, g))).toEqual([true, false]);
  });
});

describe('a problem in the shape of a machine', () => {
  it.each([1, 2, 3])('has the same answers by diagram and by search: seed %i', (seed) => {
    const core = coreOf(clusteredProblem({ seed, sets: 1, items: 200 }));
    const { network, diagrams } = core;
    const byDiagram = cheapest(taskOf(core, diagrams), free);
    const bySearch = cheapest(taskOf(core), free);
    expect(byDiagram?.cost).toBe(bySearch?.cost);
    const boxes = new BoxPool();
    const domains = (own: Diagrams | null, choices: readonly Choice[]) => {
      const state = enter(core, allowChoices(core, choices))!;
      const narrowed = narrowState({ network, state, boxes, diagrams: own }, free, () => undefined);
      return narrowed!.state.slice(0, core.layout.domain.at(-1));
    };
    // Valid choices, one after another: the search starts from the boxes of the questions before.
    const random = randomFrom(seed);
    const choices: Choice[] = [];
    for (let variable = 0; variable < 12; variable++) {
      const exact = domains(diagrams, choices);
      expect(domains(null, choices)).toEqual(exact);
      network.state = exact;
      const open = core.layout.members[variable]!.filter((_, g) => hasGroup(network, variable, g));
      choices.push({ variable, value: open[Math.floor(random() * open.length)]![0]! });
    }
  });
});
