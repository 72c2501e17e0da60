import { describe, expect, it } from 'vitest';
import { integral } from './gauss-legendre.js';

describe('the integral', () => {
  it.each([0, 1, 2, 7, 20, 38, 39])('is exact for x to the power of %d', (degree) => {
    expect(integral((x) => x ** degree, 0, 2) / (2 ** (degree + 1) / (degree + 1))).toBeCloseTo(1, 12);
  });

  it.each([
    ['of the sine over half a turn', Math.sin, 0, Math.PI, 2],
    ['of the exponential', Math.exp, -1, 3, Math.exp(3) - Math.exp(-1)],
    ['of the reciprocal', (x: number) => 1 / x, 1, 4, Math.log(4)],
  ] as const)('%s is that of the tables', (_words, f, from, to, expected) => {
    expect(integral(f, from, to) / expected).toBeCloseTo(1, 12);
  });

  it('changes its sign with its ends and is nothing between equal ones', () => {
    expect(integral(Math.exp, 2, 1)).toBeCloseTo(Math.E - Math.E ** 2, 12);
    expect(integral(Math.exp, 2, 2)).toBe(0);
  });
});
