import { describe, expect, it } from 'vitest';
import { editDistance, nearestName } from './edit-distance.js';

describe('editDistance', () => {
  it.each([
    ['methanol', 'methanol', 0],
    ['methnaol', 'methanol', 1],
    ['metanol', 'methanol', 1],
    ['', 'abc', 3],
    // The textbook example of the Levenshtein distance.
    ['kitten', 'sitting', 3],
  ])('of %s and %s is %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });
});

describe('nearestName', () => {
  it('finds the name that was meant, whatever its case', () => {
    expect(nearestName('Tolune', ['methanol', 'toluene', 'acetone'])).toBe('toluene');
  });

  it('names nothing where nothing is near', () => {
    expect(nearestName('nitro compound', ['methanol', 'nitrogen'])).toBeUndefined();
    expect(nearestName('CO', ['H2O', 'xenon'])).toBeUndefined();
  });
});
