import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { geometryCalculations } from './geometry-calculations.js';

describe('geometry agrees with the reference cases', () => {
  it.each(referenceCases('geometry').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(geometryCalculations, referenceCase);
    },
  );
});

it.each(samples('geometry').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(geometryCalculations, sample);
  },
);
