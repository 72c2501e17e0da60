import { expect, it } from 'vitest';
import { letterOf, printedNumber } from './letters.js';

it('counts in letters as people do', () => {
  expect([1, 2, 26, 27, 52, 53, 702, 703].map(letterOf)).toEqual([
    'A',
    'B',
    'Z',
    'AA',
    'AZ',
    'BA',
    'ZZ',
    'AAA',
  ]);
});

it('gives every number a letter of its own', () => {
  const letters = Array.from({ length: 2000 }, (_, index) => letterOf(index + 1));
  expect(new Set(letters).size).toBe(letters.length);
});

it('prints numbers with four digits or more', () => {
  expect([7, 2417, 12345].map(printedNumber)).toEqual(['0007', '2417', '12345']);
});
