import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { hazardousAreaCalculations } from './hazardous-area-calculations.js';

describe('explosive atmospheres agree with the reference cases', () => {
  it.each(referenceCases('hazardousArea').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(hazardousAreaCalculations, referenceCase);
    },
  );
});

it.each(samples('hazardousArea').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(hazardousAreaCalculations, sample);
  },
);
