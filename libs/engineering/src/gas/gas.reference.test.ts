import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { gasCalculations } from './gas-calculations.js';

describe('gas agrees with the reference cases', () => {
  it.each(referenceCases('gas').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(gasCalculations, referenceCase);
    },
  );
});

it.each(samples('gas').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(gasCalculations, sample);
  },
);
