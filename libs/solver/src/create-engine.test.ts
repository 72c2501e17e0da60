import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createEngine, ProblemError } from './index.js';
import type { ConstraintSpec, Problem } from './problem.js';
import { proved } from './testing/proved.js';
import { smallCase } from './testing/random-problem.js';

const variables = [
  { id: 'vessel', size: 2 },
  { id: 'cover', size: 3 },
];

const withConstraint = (spec: ConstraintSpec): Problem => ({ variables, constraints: [spec] });

const table = { kind: 'table', id: 'fit', scope: [0, 1] } as const;

const ports = {
  kind: 'ports',
  id: 'ports',
  host: 0,
  hostPorts: [Float64Array.of(3), Float64Array.of(2)],
  users: [],
} as const;

const obstacle = {
  variable: 1,
  classOf: Uint16Array.of(0, 1, 1),
  leaves: [
    [Float64Array.of(1), Float64Array.of(1)],
    [Float64Array.of(3), Float64Array.of(2)],
  ],
};
const behind = { hostClassOf: Uint16Array.of(0, 1), obstacles: [obstacle] };

describe('createEngine', () => {
  it.each<[string, Problem, RegExp]>([
    [
      'a table of the wrong size',
      withConstraint({ ...table, allowed: new Uint8Array(5) }),
      /fit.*allowed has 5 entries, 6/,
    ],
    [
      'a variable out of range',
      withConstraint({ ...table, scope: [0, 2], allowed: new Uint8Array(6) }),
      /fit.*variable 2/,
    ],
    [
      'a variable twice',
      withConstraint({ ...table, scope: [1, 1], allowed: new Uint8Array(9) }),
      /fit.*twice/,
    ],
    [
      'a class out of range',
      withConstraint({
        ...table,
        classOf: [Uint16Array.of(0, 1), Uint16Array.of(0, 1, 2)],
        classCount: [2, 2],
        allowed: new Uint8Array(4),
      }),
      /fit.*classOf\[1\]\[2\] is 2, below 2/,
    ],
    [
      'a side that is not a number',
      withConstraint({
        kind: 'comparison',
        id: 'torque',
        demand: { scope: [0], values: Float64Array.of(1, NaN) },
        limit: { scope: [], values: Float64Array.of(1) },
      }),
      /torque.*demand.values is NaN at entry 1/,
    ],
    [
      'an infinite weight',
      withConstraint({
        kind: 'sum',
        id: 'mass',
        terms: [{ variable: 0, weights: Float64Array.of(1, Infinity) }],
        limit: { constant: 3 },
      }),
      /mass.*Infinity, a finite number/,
    ],
    [
      'a host that uses its own ports',
      withConstraint({
        kind: 'ports',
        id: 'ports',
        host: 0,
        hostPorts: [Float64Array.of(), Float64Array.of()],
        users: [{ variable: 0, needs: [Float64Array.of(), Float64Array.of()] }],
      }),
      /ports.*twice/,
    ],
    [
      'a giver of ports as large as its own',
      withConstraint({
        ...ports,
        users: [
          {
            variable: 1,
            needs: [Float64Array.of(2), Float64Array.of(2), Float64Array.of(2)],
            gives: [Float64Array.of(1), Float64Array.of(2), Float64Array.of()],
          },
        ],
      }),
      /ports.*smaller than those that its giver needs/,
    ],
    [
      'what reaches through without a port',
      withConstraint({ ...ports, through: [Float64Array.of(3)] }),
      /ports.*through has 1 entries, 2/,
    ],
    [
      'a host that stands behind its own ports',
      withConstraint({ ...ports, behind: { ...behind, obstacles: [{ ...obstacle, variable: 0 }] } }),
      /ports.*not their host/,
    ],
    [
      'an obstacle that says too little',
      withConstraint({ ...ports, behind: { ...behind, obstacles: [{ ...obstacle, leaves: [[], []] }] } }),
      /ports.*leaves has 0 entries, 1/,
    ],
    [
      'hosts of one class with different ports',
      withConstraint({
        ...ports,
        hostPorts: [Float64Array.of(3), Float64Array.of(3, 3)],
        behind: { ...behind, hostClassOf: Uint16Array.of(0, 0) },
      }),
      /ports.*different ports/,
    ],
    [
      'a price list of the wrong size',
      { variables: [{ id: 'v', size: 2, cost: Int32Array.of(1) }], constraints: [] },
      /v: cost has 1/,
    ],
    ['a variable without values', { variables: [{ id: 'v', size: 0 }], constraints: [] }, /v: size is 0/],
  ])('refuses %s', (_, problem, message) => {
    expect(() => createEngine(problem)).toThrow(ProblemError);
    expect(() => createEngine(problem)).toThrow(message);
  });

  it('refuses two constraints of one id, and choices that make no sense', () => {
    const spec = { ...table, allowed: new Uint8Array(6).fill(1) };
    expect(() => createEngine({ variables, constraints: [spec, spec] })).toThrow(/fit is declared twice/);
    const engine = createEngine(withConstraint(spec));
    expect(() => engine.narrow({ choices: [{ variable: 0, value: 2 }] })).toThrow(/vessel.*between 0 and 1/);
    const twice = [
      { variable: 1, value: 0 },
      { variable: 1, value: 1 },
    ];
    expect(() => engine.narrow({ choices: twice })).toThrow(/cover is chosen twice/);
    expect(() =>
      engine.repair({ by: 'priority', choices: [{ variable: 1, value: 0, priority: 0 }] }),
    ).toThrow(/above 0/);
    expect(() => engine.replaceConstraints([{ ...spec, id: 'other' }])).toThrow(/no constraint other/);
  });
});

describe('replaceConstraints', () => {
  it('works each replaced constraint out anew', () => {
    const fit = (...allowed: number[]) => ({ ...table, scope: [1], allowed: Uint8Array.from(allowed) });
    const limit = (constant: number): ConstraintSpec => ({
      ...{ kind: 'sum', id: 'mass', limit: { constant } },
      terms: [{ variable: 0, weights: Float64Array.of(1, 2) }],
    });
    const engine = createEngine({ variables, constraints: [fit(1, 0, 0), limit(1)] });
    const valid = (changed: typeof engine) => proved(changed.narrow()).valid.map((flags) => [...flags]);
    expect(valid(engine)).toEqual([
      [1, 0],
      [1, 0, 0],
    ]);
    expect(valid(engine.replaceConstraints([fit(0, 1, 1)]))).toEqual([
      [1, 0],
      [0, 1, 1],
    ]);
    expect(valid(engine.replaceConstraints([limit(2), fit(0, 1, 1)]))).toEqual([
      [1, 1],
      [0, 1, 1],
    ]);
  });

  it('answers as a new engine does, and leaves the old engine as it was', () => {
    fc.assert(
      fc.property(smallCase, smallCase, ({ problem }, other) => {
        const sizes = problem.variables.map((v) => v.size).join();
        const constraints = problem.constraints.map((spec, i) => {
          const replacement = other.problem.constraints[i];
          const fits = other.problem.variables.map((v) => v.size).join() === sizes;
          if (replacement && fits) return { ...replacement, id: spec.id };
          return spec.kind === 'table' ? { ...spec, allowed: spec.allowed.map((a) => 1 - a) } : spec;
        });
        const old = createEngine(problem);
        const before = old.narrow();
        const changed = constraints.filter((c, i) => c !== problem.constraints[i]);
        const fresh = createEngine({ variables: problem.variables, constraints });
        const replaced = old.replaceConstraints(changed);
        expect(proved(replaced.narrow())).toEqual(proved(fresh.narrow()));
        expect(proved(replaced.count())).toBe(proved(fresh.count()));
        expect(replaced.best({ objective: { kind: 'cost' } })).toEqual(
          fresh.best({ objective: { kind: 'cost' } }),
        );
        expect(createEngine(problem).narrow()).toEqual(before);
        expect(old.narrow()).toEqual(before);
      }),
      { numRuns: 150, endOnFailure: true },
    );
  });
});
