import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { heatCalculations } from './heat-calculations.js';

describe('heat agrees with the reference cases', () => {
  it.each(referenceCases('heat').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(heatCalculations, referenceCase);
    },
  );
});

it.each(samples('heat').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(heatCalculations, sample);
  },
);
