import * as fc from '../../node_modules/fast-check/lib/fast-check.js';

/** Random tests as they are, but with few samples, and the same ones for every mutant. */
export default {
  ...fc,
  assert: <T>(property: fc.IRawProperty<T>, given: fc.Parameters<T> = {}) =>
    fc.assert(property, { ...given, seed: 20_260_101, numRuns: Math.min(given.numRuns ?? 20, 20) }),
};
