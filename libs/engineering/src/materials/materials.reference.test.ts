import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { materialsCalculations } from './materials-calculations.js';

describe('materials agree with the reference cases', () => {
  it.each(referenceCases('materials').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(materialsCalculations, referenceCase);
    },
  );
});

it.each(samples('materials').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(materialsCalculations, sample);
  },
);
