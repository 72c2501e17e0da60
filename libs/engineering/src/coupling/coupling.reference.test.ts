import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { couplingCalculations } from './coupling-calculations.js';

describe('coupling agrees with the reference cases', () => {
  it.each(referenceCases('coupling').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(couplingCalculations, referenceCase);
    },
  );
});

it.each(samples('coupling').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(couplingCalculations, sample);
  },
);
