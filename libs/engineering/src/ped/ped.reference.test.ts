import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { pedCalculations } from './ped-calculations.js';

describe('classification of pressure equipment agrees with the reference cases', () => {
  it.each(referenceCases('ped').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(pedCalculations, referenceCase);
    },
  );
});

it.each(samples('ped').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(pedCalculations, sample);
  },
);
