import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createEngine } from './index.js';
import type { Problem } from './problem.js';
import { allSolutions } from './testing/enumeration.js';
import { proved } from './testing/proved.js';
import { validValues } from './testing/valid-values.js';

/** Up to so many of each accessory. */
const most = 2;
const portSizes = [6, 10, 20];

const accessory = fc.record({
  portSize: fc.constantFrom(...portSizes),
  mass: fc.integer({ min: 1, max: 4 }),
  price: fc.integer({ min: 0, max: 9 }),
});

const accessories = fc.record({
  ports: fc.array(fc.array(fc.constantFrom(...portSizes), { maxLength: 4 }), { minLength: 1, maxLength: 3 }),
  pieces: fc.array(accessory, { minLength: 1, maxLength: 3 }),
  mostMass: fc.integer({ min: 0, max: 14 }),
  atLeast: fc.integer({ min: 0, max: 3 }),
});

const quantities = Array.from({ length: most + 1 }, (_, quantity) => quantity);

/** A cover, and for each accessory a variable whose value is its quantity: each piece takes a port of its own and adds its mass and price. */
const problemOf = ({
  ports,
  pieces,
  mostMass,
  atLeast,
}: {
  readonly ports: readonly number[][];
  readonly pieces: readonly { readonly portSize: number; readonly mass: number; readonly price: number }[];
  readonly mostMass: number;
  readonly atLeast: number;
}): Problem => ({
  variables: [
    { id: 'cover', size: ports.length },
    ...pieces.map(({ price }, k) => ({
      id: `accessory ${String(k)}`,
      size: most + 1,
      cost: Int32Array.from(quantities, (quantity) => quantity * price),
    })),
  ],
  constraints: [
    {
      kind: 'ports',
      id: 'ports',
      host: 0,
      hostPorts: ports.map((list) => Float64Array.from(list)),
      users: pieces.map(({ portSize }, k) => ({
        variable: k + 1,
        needs: quantities.map((quantity) => new Float64Array(quantity).fill(portSize)),
      })),
    },
    {
      kind: 'sum',
      id: 'mass',
      terms: pieces.map(({ mass }, k) => ({
        variable: k + 1,
        weights: Float64Array.from(quantities, (quantity) => quantity * mass),
      })),
      limit: { constant: mostMass },
    },
    {
      kind: 'sum',
      id: 'wanted',
      terms: pieces.map((_, k) => ({
        variable: k + 1,
        weights: Float64Array.from(quantities, (quantity) => -quantity),
      })),
      limit: { constant: -atLeast },
    },
  ],
});

it('chooses several accessories, each in a quantity, as enumeration does', () => {
  fc.assert(
    fc.property(accessories, (given) => {
      const problem = problemOf(given);
      const engine = createEngine(problem);
      const solutions = allSolutions(problem);
      expect(proved(engine.count())).toBe(BigInt(solutions.length));
      expect(proved(engine.narrow()).valid).toEqual(validValues(problem, solutions));
      const costs = solutions.map((solution) =>
        given.pieces.reduce((sum, { price }, k) => sum + price * (solution[k + 1] as number), 0),
      );
      const best = proved(engine.best({ objective: { kind: 'cost' } }));
      expect(best === 'impossible' ? null : best.cost).toBe(costs.length === 0 ? null : Math.min(...costs));
    }),
    { numRuns: 300, endOnFailure: true },
  );
});
