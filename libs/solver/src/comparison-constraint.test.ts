import { expect, it } from 'vitest';
import { ComparisonConstraint } from './comparison-constraint.js';

it.each([
  [[0], [1], true],
  [[0, 1], [1], false],
])('a comparison of %j with %j is exact: %s', (demand, limit, isExact) => {
  const table = (variables: number[]) => ({
    counts: variables.map(() => 2),
    loads: new Int32Array(2 ** variables.length),
  });
  const constraint = new ComparisonConstraint(
    {
      kind: 'comparison',
      id: 'c',
      demand: { scope: [], values: Float64Array.of(0) },
      limit: { scope: [], values: Float64Array.of(0) },
    },
    {
      ...{ demand: table(demand), limit: table(limit), variables: [...demand, ...limit], sizes: [2, 2] },
      views: Int32Array.from([...demand, ...limit], (_, i) => i),
    },
  );
  expect(constraint.isExact()).toBe(isExact);
});
