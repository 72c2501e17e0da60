import fc from 'fast-check';
import { expect, it } from 'vitest';
import { scaleOver } from './chart-scale';

it('has round ticks with room at both ends', () => {
  expect(scaleOver([69.2, 94], { count: 5, least: 1 }).ticks).toEqual([65, 70, 75, 80, 85, 90, 95, 100]);
});

it('does not draw out differences that are small', () => {
  expect(scaleOver([10, 10], { count: 5, least: 1 }).ticks).toEqual([9, 10, 11]);
  expect(scaleOver([55.255, 56.245], { count: 5, least: 1 }).ticks).toEqual([54, 55, 56, 57]);
});

it('starts where it is told to', () => {
  expect(scaleOver([0, 0], { count: 5, least: 2, from: 0 }).ticks[0]).toBe(0);
  expect(scaleOver([14, 20], { count: 5, least: 2, from: 0 }).ticks).toEqual([0, 5, 10, 15, 20, 25]);
});

it('holds every value, none at an end', () => {
  const values = fc.array(fc.double({ min: 0.01, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(values, (some) => {
      const { at, ticks } = scaleOver(some, { count: 5, least: 1 });
      for (const value of some) {
        expect(at(value)).toBeGreaterThan(0);
        expect(at(value)).toBeLessThan(1);
      }
      expect(ticks.length).toBeLessThan(12);
    }),
  );
});
