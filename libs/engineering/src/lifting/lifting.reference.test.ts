import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { liftingCalculations } from './lifting-calculations.js';

describe('manual handling agrees with the reference cases', () => {
  it.each(referenceCases('lifting').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(liftingCalculations, referenceCase);
    },
  );
});

it.each(samples('lifting').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(liftingCalculations, sample);
  },
);
