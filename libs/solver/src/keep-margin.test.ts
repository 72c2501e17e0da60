import { expect, it } from 'vitest';
import { nextUp } from './keep-margin.js';

// IEEE 754: the gap above 1 is 2^-52, above 0 it is 2^-1074, above -1 it is 2^-53.
it.each([
  [1, 1 + 2 ** -52],
  [0, 2 ** -1074],
  [-1, -1 + 2 ** -53],
])('the number after %d is %d', (x, next) => {
  expect(nextUp(x)).toBe(next);
});
