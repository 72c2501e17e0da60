import fc from 'fast-check';
import type { Choice } from '../answers.js';
import type { ConstraintSpec, PortsSpec, PortUser, Problem, Side, VariableSpec } from '../problem.js';

/** Draws from fast-check's randomness, so that a failing problem shrinks and its seed is printed. */
type Draw = <T>(arbitrary: fc.Arbitrary<T>) => T;

const integer = (draw: Draw, min: number, max: number): number => draw(fc.integer({ min, max }));

function scopeOf(draw: Draw, sizes: readonly number[], most: number): number[] {
  return draw(
    fc.uniqueArray(fc.integer({ min: 0, max: sizes.length - 1 }), { minLength: 1, maxLength: most }),
  );
}

function classesOf(draw: Draw, sizes: readonly number[], scope: readonly number[]) {
  const classCount = scope.map((x) => integer(draw, 1, (sizes[x] as number) + 1));
  const classOf = scope.map((x, i) =>
    Uint16Array.from({ length: sizes[x] as number }, () => integer(draw, 0, (classCount[i] as number) - 1)),
  );
  return draw(fc.boolean()) ? { classOf, classCount } : {};
}

const tuples = (sizes: readonly number[], scope: readonly number[], classCount?: readonly number[]): number =>
  scope.reduce((product, x, i) => product * (classCount?.[i] ?? (sizes[x] as number)), 1);

/** Few distinct numbers, with exact ties, near ties and infinities. */
const number = fc.oneof(
  { arbitrary: fc.integer({ min: 0, max: 8 }).map((n) => n / 3), weight: 8 },
  { arbitrary: fc.constantFrom(1, 1 + 1e-14, 0.1 + 0.2, 0.3), weight: 2 },
  { arbitrary: fc.constantFrom(Infinity, -Infinity, 0), weight: 1 },
);

function sideOf(draw: Draw, sizes: readonly number[]): Side {
  const scope = draw(fc.boolean()) || sizes.length === 0 ? scopeOf(draw, sizes, 2) : scopeOf(draw, sizes, 1);
  const classes = classesOf(draw, sizes, scope);
  const values = Float64Array.from({ length: tuples(sizes, scope, classes.classCount) }, () => draw(number));
  return { scope, ...classes, values };
}

function tableOf(draw: Draw, sizes: readonly number[], id: string): ConstraintSpec {
  const scope = scopeOf(draw, sizes, 3);
  const classes = classesOf(draw, sizes, scope);
  const count = tuples(sizes, scope, classes.classCount);
  const allowed = Uint8Array.from({ length: count }, () => (integer(draw, 0, 3) > 0 ? 1 : 0));
  const margin = Float64Array.from({ length: count }, () => integer(draw, -2, 6) / 4);
  return { kind: 'table', id, scope, ...classes, allowed, ...(draw(fc.boolean()) ? { margin } : {}) };
}

const marginKind = fc.constantFrom(undefined, 'ratio' as const, 'difference' as const);

function withMarginKind<T extends object>(draw: Draw, spec: T): T & { margin?: 'ratio' | 'difference' } {
  const margin = draw(marginKind);
  return margin ? { ...spec, margin } : spec;
}

function sumOf(draw: Draw, sizes: readonly number[], id: string): ConstraintSpec {
  const weight = fc.constantFrom(0, 0.1, 0.2, 0.3, 1 / 3, 1, 2, -0.5);
  const variables = draw(
    fc.array(fc.integer({ min: 0, max: sizes.length - 1 }), { minLength: 1, maxLength: 4 }),
  );
  const list = (x: number, of: fc.Arbitrary<number>): Float64Array =>
    Float64Array.from({ length: sizes[x] as number }, () => draw(of));
  const terms = variables.map((variable) => ({ variable, weights: list(variable, weight) }));
  const bound = fc.constantFrom(0.3, 0.6, 1, 4 / 3, 2, Infinity);
  const variable = integer(draw, 0, sizes.length - 1);
  const limit = draw(fc.boolean()) ? { constant: draw(bound) } : { variable, values: list(variable, bound) };
  return withMarginKind(draw, { kind: 'sum' as const, id, terms, limit });
}

/** Users, hosts and obstacles in every mixture: some reach through, some give ports, some stand behind and use ports too. */
function portsOf(draw: Draw, sizes: readonly number[], id: string): ConstraintSpec {
  const [host, ...users] = draw(
    fc.uniqueArray(fc.integer({ min: 0, max: sizes.length - 1 }), { minLength: 1, maxLength: 4 }),
  ) as [number, ...number[]];
  const size = fc.constantFrom(1, 2, 3);
  const lists = (x: number, most: number, of: fc.Arbitrary<number> = size): Float64Array[] =>
    Array.from({ length: sizes[x] as number }, () =>
      Float64Array.from(draw(fc.array(of, { maxLength: most }))),
    );
  const hostPorts = lists(host, 5);
  const leaves = fc.constantFrom(0, 1, 2, 3, Infinity);
  const behind = (): NonNullable<PortsSpec['behind']> => ({
    hostClassOf: Uint16Array.from(hostPorts.keys()),
    obstacles: draw(fc.uniqueArray(fc.integer({ min: 0, max: sizes.length - 1 }), { maxLength: 2 })).flatMap(
      (variable) => {
        if (variable === host) return [];
        const count = integer(draw, 1, 3);
        return [
          {
            variable,
            classOf: Uint16Array.from({ length: sizes[variable] as number }, () =>
              integer(draw, 0, count - 1),
            ),
            leaves: Array.from({ length: count }, () =>
              hostPorts.map((ports) => Float64Array.from(ports, () => draw(leaves))),
            ),
          },
        ];
      },
    ),
  });
  const giver = (variable: number): PortUser => ({
    variable,
    needs: lists(variable, 0).map(() => Float64Array.of(draw(fc.constantFrom(2, 3)))),
    gives: lists(variable, 2, fc.constant(1)),
  });
  const user = (variable: number): PortUser => ({
    variable,
    needs: lists(variable, 2),
    ...(draw(fc.boolean())
      ? { reaches: Uint8Array.from({ length: sizes[variable] as number }, () => integer(draw, 0, 1)) }
      : {}),
  });
  return {
    kind: 'ports',
    id,
    host,
    hostPorts,
    users: users.map((variable) => (integer(draw, 0, 3) === 0 ? giver(variable) : user(variable))),
    ...(draw(fc.boolean()) ? { spare: Float64Array.from(draw(fc.array(size, { maxLength: 1 }))) } : {}),
    ...(integer(draw, 0, 3) === 0
      ? { through: hostPorts.map((ports) => ports.map((s) => draw(fc.constantFrom(0, 1, s)))) }
      : {}),
    ...(draw(fc.boolean()) ? { behind: behind() } : {}),
  };
}

function constraintOf(draw: Draw, sizes: readonly number[], id: string): ConstraintSpec {
  switch (integer(draw, 0, 5)) {
    case 0:
      return sumOf(draw, sizes, id);
    case 1:
      return portsOf(draw, sizes, id);
    case 2:
    case 3: {
      const sides = { demand: sideOf(draw, sizes), limit: sideOf(draw, sizes) };
      return withMarginKind(draw, { kind: 'comparison' as const, id, ...sides });
    }
    default:
      return tableOf(draw, sizes, id);
  }
}

export interface Case {
  readonly problem: Problem;
  readonly choices: readonly Choice[];
}

interface Shape {
  readonly variables: [number, number];
  readonly size: [number, number];
  readonly constraints: [number, number];
}

function build(draw: Draw, shape: Shape): Case {
  const count = integer(draw, ...shape.variables);
  const variables = Array.from({ length: count }, (_, x): VariableSpec => {
    const size = integer(draw, ...shape.size);
    const list = (max: number): Int32Array => Int32Array.from({ length: size }, () => integer(draw, 0, max));
    const cost = draw(fc.boolean()) ? { cost: list(6) } : {};
    const delay = draw(fc.boolean()) ? { delay: list(3) } : {};
    return { id: `x${String(x)}`, size, ...cost, ...delay };
  });
  const sizes = variables.map((v) => v.size);
  const constraints = Array.from({ length: integer(draw, ...shape.constraints) }, (_, c) =>
    constraintOf(draw, sizes, `c${String(c)}`),
  );
  const chosen = draw(fc.subarray([...sizes.keys()]));
  const choices = chosen.map((variable) => ({
    variable,
    value: integer(draw, 0, (sizes[variable] as number) - 1),
    priority: integer(draw, 1, 3),
  }));
  return { problem: { variables, constraints }, choices };
}

/** Ports alone, so that nothing but their own propagation decides. */
export const portsCase: fc.Arbitrary<Case> = fc.gen().map((generate) => {
  const draw: Draw = (arbitrary) => generate(() => arbitrary);
  const sizes = Array.from({ length: integer(draw, 2, 5) }, () => integer(draw, 2, 4));
  const variables = sizes.map((size, x): VariableSpec => ({ id: `x${String(x)}`, size }));
  return { problem: { variables, constraints: [portsOf(draw, sizes, 'ports')] }, choices: [] };
});

const casesOf = (shape: Shape): fc.Arbitrary<Case> =>
  fc.gen().map((generate) => build((arbitrary) => generate(() => arbitrary), shape));

/** Small problems of every kind of constraint, with some choices; often inconsistent ones. */
export const smallCase: fc.Arbitrary<Case> = casesOf({
  variables: [1, 5],
  size: [1, 4],
  constraints: [0, 5],
});

/** Problems with more to search in, still small enough to be enumerated. */
export const mediumCase: fc.Arbitrary<Case> = casesOf({
  variables: [6, 7],
  size: [2, 4],
  constraints: [4, 9],
});

/** Pairs and triples of few values that many tables tie together: much that propagation leaves open leads nowhere. */
export const knottedCase: fc.Arbitrary<Case> = fc.gen().map((generate) => {
  const draw: Draw = (arbitrary) => generate(() => arbitrary);
  const sizes = Array.from({ length: integer(draw, 5, 7) }, () => integer(draw, 2, 3));
  const variables = sizes.map((size, x): VariableSpec => {
    const list = (): Int32Array => Int32Array.from({ length: size }, () => integer(draw, 0, 9));
    return { id: `x${String(x)}`, size, cost: list(), delay: list() };
  });
  const constraints = Array.from({ length: integer(draw, 8, 16) }, (_, c): ConstraintSpec => {
    const scope = draw(
      fc.uniqueArray(fc.integer({ min: 0, max: sizes.length - 1 }), { minLength: 2, maxLength: 3 }),
    );
    const allowed = Uint8Array.from({ length: tuples(sizes, scope) }, () =>
      integer(draw, 0, 9) < 6 ? 1 : 0,
    );
    return { kind: 'table', id: `c${String(c)}`, scope, allowed };
  });
  const chosen = draw(fc.subarray([...sizes.keys()], { maxLength: 3 }));
  const choices = chosen.map((variable) => ({
    variable,
    value: integer(draw, 0, (sizes[variable] as number) - 1),
  }));
  return { problem: { variables, constraints }, choices };
});

/** Any of the cases. */
export const anyCase: fc.Arbitrary<Case> = fc.oneof(smallCase, knottedCase);
