import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { strengthCalculations } from './strength-calculations.js';

describe('strength agrees with the reference cases', () => {
  it.each(referenceCases('strength').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(strengthCalculations, referenceCase);
    },
  );
});

it.each(samples('strength').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(strengthCalculations, sample);
  },
);
