import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Answer, type ConstraintSpec, createEngine, type Problem } from '@flangewise/solver';
import { describe, expect, it } from 'vitest';

/**
 * Open configuration instances, read from a folder beside the checkout (or the one that INSTANCES names) where it is there.
 * Dead and core features as published in `statistics/Complete.csv` of the feature-model benchmark
 * (Zenodo 10.5281/zenodo.11652924); the dead values of the car as two other programs found them.
 */
const folder =
  process.env['INSTANCES'] ?? join(import.meta.dirname, '../../../shared/reference/engine-instances');
const isThere = existsSync(folder);

const proved = <T>(answer: Answer<T>): T => {
  if (answer.status !== 'proved') throw new Error(`not proved: ${answer.reason}`);
  return answer.value;
};

/** Features as variables of two values, clauses as sums. Returns which variables are features, by the comments of the file. */
function readDimacs(text: string): { problem: Problem; features: number[] } {
  const lines = text.split('\n').map((line) => line.trim());
  const count = Number(/^p cnf (\d+)/m.exec(text)?.[1]);
  const features = lines.flatMap((line) => {
    const match = /^c (\d+) /.exec(line);
    return match ? [Number(match[1]) - 1] : [];
  });
  const clauses = lines
    .filter((line) => /^-?\d/.test(line))
    .map((line) => [...new Set(line.split(/\s+/).map(Number))].filter((l) => l !== 0));
  const constraints = clauses
    .filter((clause) => !clause.some((l) => clause.includes(-l)))
    .map((clause, c): ConstraintSpec => {
      // Not all of its literals are false.
      const terms = clause.map((l) => ({
        variable: Math.abs(l) - 1,
        weights: l < 0 ? Float64Array.of(0, 1) : Float64Array.of(1, 0),
      }));
      return { kind: 'sum', id: `clause${String(c)}`, terms, limit: { constant: clause.length - 1 } };
    });
  const variables = Array.from({ length: count }, (_, i) => ({ id: `v${String(i + 1)}`, size: 2 }));
  return { problem: { variables, constraints }, features };
}

describe.skipIf(!isThere)('feature models (needs the open instances)', () => {
  it.each([
    ['decisional', 0, 13],
    ['printer', 0, 49],
    ['routefinding', 0, 43],
    ['berkeleydb', 6, 14],
    ['pc-richmond', 0, 9],
    ['financial-2018-03', 3, 25],
  ])(
    '%s has %i dead features and %i core features',
    (name, dead, core) => {
      const { problem, features } = readDimacs(readFileSync(join(folder, `${name}.dimacs`), 'utf8'));
      const { consistent, valid } = proved(createEngine(problem).narrow());
      expect(consistent).toBe(true);
      expect(features.filter((x) => valid[x]![1] === 0)).toHaveLength(dead);
      expect(features.filter((x) => valid[x]![0] === 0)).toHaveLength(core);
    },
    120_000,
  );
});

interface Car {
  readonly variables: readonly { readonly name: string; readonly domain: readonly string[] }[];
  readonly tables: readonly {
    readonly id: string;
    readonly scope: readonly number[];
    readonly tuples: readonly (readonly number[])[];
  }[];
}

/** Combinations up to which a table is given as it is. */
const MOST_CELLS = 200_000;

describe.skipIf(!isThere)('variants of a car (needs the open instances)', () => {
  it('have four values that never occur', () => {
    const car = JSON.parse(readFileSync(join(folder, 'renault-megane.json'), 'utf8')) as Car;
    const variables = car.variables.map(({ name, domain }) => ({ id: name, size: domain.length }));
    const sizes = variables.map((v) => v.size);
    const constraints = car.tables.flatMap(({ id, scope, tuples }): ConstraintSpec[] => {
      const cells = scope.reduce((product, x) => product * sizes[x]!, 1);
      if (cells < MOST_CELLS) {
        const allowed = new Uint8Array(cells);
        for (const tuple of tuples)
          allowed[tuple.reduce((index, v, i) => index * sizes[scope[i]!]! + v, 0)] = 1;
        return [{ kind: 'table', id, scope, allowed }];
      }
      // One variable more stands for the tuple, and decides the values of the others.
      const chosen = variables.push({ id: `tuple of ${id}`, size: tuples.length }) - 1;
      return scope.map((x, i) => {
        const size = sizes[x]!;
        const same = Uint8Array.from({ length: size * size }, (_, t) =>
          Math.floor(t / size) === t % size ? 1 : 0,
        );
        return {
          ...{
            kind: 'table',
            id: `${id}.${String(i)}`,
            scope: [chosen, x],
            classCount: [size, size],
            allowed: same,
          },
          classOf: [
            Uint16Array.from(tuples, (tuple) => tuple[i]!),
            Uint16Array.from({ length: size }, (_, v) => v),
          ],
        };
      });
    });
    const { valid } = proved(createEngine({ variables, constraints }).narrow());
    const dead = car.variables.flatMap(({ name, domain }, x) =>
      domain.filter((_, v) => valid[x]![v] === 0).map((value) => `${name}=${value}`),
    );
    expect(dead.sort()).toEqual(['Var100=CRIT731', 'Var55=CRIT2RHENF', 'Var80=CRIT4X25KI', 'Var8=CPLG']);
  });
});
