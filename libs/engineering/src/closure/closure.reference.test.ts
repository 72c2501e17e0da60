import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { closureCalculations } from './closure-calculations.js';

describe('closure agrees with the reference cases', () => {
  it.each(referenceCases('closure').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(closureCalculations, referenceCase);
    },
  );
});

it.each(samples('closure').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(closureCalculations, sample);
  },
);
