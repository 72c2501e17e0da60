import { expect, it } from 'vitest';
import { frontOf } from './front';

it('keeps what nothing beats in price and goodness, the cheapest first', () => {
  const cheap = { price: 36, good: 2 };
  const beaten = { price: 40, good: 2 };
  const better = { price: 50, good: 9 };
  const dear = { price: 78, good: 9 };
  const best = { price: 70, good: 24 };
  expect(frontOf([dear, best, beaten, better, cheap])).toEqual([cheap, better, best]);
});

it('takes the better of two that cost the same', () => {
  expect(
    frontOf([
      { price: 1, good: 1 },
      { price: 1, good: 2 },
    ]),
  ).toEqual([{ price: 1, good: 2 }]);
});

it('has nothing to say of nothing', () => {
  expect(frontOf([])).toEqual([]);
});
