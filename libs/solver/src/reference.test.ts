import { describe, expect, it } from 'vitest';
import { createEngine } from './index.js';
import type { ConstraintSpec } from './problem.js';
import { proved } from './testing/proved.js';

/** Two variables of `size` values, allowed where `isAllowed` holds. */
function pair(
  scope: [number, number],
  size: number,
  isAllowed: (a: number, b: number) => boolean,
): ConstraintSpec {
  const allowed = Uint8Array.from({ length: size * size }, (_, t) =>
    isAllowed(Math.floor(t / size), t % size) ? 1 : 0,
  );
  return { kind: 'table', id: scope.join('-'), scope, allowed };
}

const variables = (count: number, size: number) =>
  Array.from({ length: count }, (_, i) => ({ id: `v${String(i)}`, size }));

const pairs = (count: number): [number, number][] =>
  Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_, i): [number, number] => [a, a + 1 + i]),
  ).flat();

describe('known results', () => {
  // OEIS A000170: ways of placing n non-attacking queens on an n × n board.
  it.each([
    [4, 2],
    [5, 10],
    [6, 4],
    [7, 40],
    [8, 92],
  ])('counts the %i queens placements: %i', (n, ways) => {
    const constraints = pairs(n).map(([a, b]) =>
      pair([a, b], n, (p, q) => p !== q && Math.abs(p - q) !== b - a),
    );
    const engine = createEngine({ variables: variables(n, n), constraints });
    expect(proved(engine.count())).toBe(BigInt(ways));
  });

  // OEIS A002860: Latin squares of order n.
  it.each([
    [2, 2],
    [3, 12],
    [4, 576],
  ])('counts the Latin squares of order %i: %i', (n, squares) => {
    const constraints = pairs(n * n)
      .filter(([a, b]) => Math.floor(a / n) === Math.floor(b / n) || a % n === b % n)
      .map((scope) => pair(scope, n, (p, q) => p !== q));
    const engine = createEngine({ variables: variables(n * n, n), constraints });
    expect(proved(engine.count())).toBe(BigInt(squares));
  });

  // Chromatic polynomial of the Petersen graph: P(3) = 120, P(4) = 12960 (N. Biggs, Algebraic Graph Theory; P(2) = 0).
  it.each([
    [2, 0],
    [3, 120],
    [4, 12_960],
  ])('counts the colourings of the Petersen graph with %i colours: %i', (colours, ways) => {
    const edges = Array.from({ length: 5 }, (_, i): [number, number][] => [
      [i, (i + 1) % 5],
      [i, i + 5],
      [i + 5, ((i + 2) % 5) + 5],
    ]).flat();
    const constraints = edges.map((scope) => pair(scope, colours, (p, q) => p !== q));
    const engine = createEngine({ variables: variables(10, colours), constraints });
    expect(proved(engine.count())).toBe(BigInt(ways));
    expect(proved(engine.narrow()).consistent).toBe(ways > 0);
  });

  // Knapsack P01 of the KNAPSACK_01 data set (J. Burkardt, Florida State University): capacity 165, best profit 309.
  it('packs the knapsack P01 with profit 309', () => {
    const weights = [23, 31, 29, 44, 53, 38, 63, 85, 89, 82];
    const profits = [92, 57, 49, 68, 60, 43, 67, 84, 87, 72];
    const engine = createEngine({
      variables: profits.map((p, i) => ({ id: `item${String(i)}`, size: 2, cost: Int32Array.of(0, -p) })),
      constraints: [
        {
          kind: 'sum',
          id: 'capacity',
          terms: weights.map((w, variable) => ({ variable, weights: Float64Array.of(0, w) })),
          limit: { constant: 165 },
        },
      ],
    });
    const best = proved(engine.best({ objective: { kind: 'cost' } }));
    expect(best).toMatchObject({ cost: -309, solution: Int32Array.of(1, 1, 1, 1, 0, 1, 0, 0, 0, 0) });
  });
});

describe('limits at 12 significant digits', () => {
  const compare = (demand: number, limit: number): boolean =>
    proved(
      createEngine({
        variables: [{ id: 'x', size: 1 }],
        constraints: [
          {
            kind: 'comparison',
            id: 'c',
            demand: { scope: [0], values: Float64Array.of(demand) },
            limit: { scope: [], values: Float64Array.of(limit) },
          },
        ],
      }).narrow(),
    ).consistent;

  // IEEE 754 doubles: 0.1 + 0.2 = 0.30000000000000004.
  it.each([
    [0.1 + 0.2, 0.3, true],
    [1 + 4e-13, 1, true],
    [1 + 6e-12, 1, false],
    [1e15 + 1, 1e15, true],
    [-1, -1 - 6e-12, false],
    [Infinity, Infinity, true],
    [Infinity, 1e300, false],
    [-Infinity, -Infinity, true],
  ])('%d ≤ %d: %s', (demand, limit, isMet) => {
    expect(compare(demand, limit)).toBe(isMet);
  });
});
