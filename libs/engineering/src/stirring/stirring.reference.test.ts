import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { stirringCalculations } from './stirring-calculations.js';

describe('stirring agrees with the reference cases', () => {
  it.each(referenceCases('stirring').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(stirringCalculations, referenceCase);
    },
  );
});

it.each(samples('stirring').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(stirringCalculations, sample);
  },
);
