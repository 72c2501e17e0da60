import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { reliefCalculations } from './relief-calculations.js';

describe('relief agrees with the reference cases', () => {
  it.each(referenceCases('relief').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(reliefCalculations, referenceCase);
    },
  );
});

it.each(samples('relief').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(reliefCalculations, sample);
  },
);
