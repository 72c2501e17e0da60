import { describe, it } from 'vitest';
import { assertEvidence, assertReferenceCase, referenceCases, samples } from '../reference-cases.js';
import { fluidCalculations } from './fluid-calculations.js';

describe('fluid agrees with the reference cases', () => {
  it.each(referenceCases('fluid').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(fluidCalculations, referenceCase);
    },
  );
});

it.each(samples('fluid').map((sample) => [sample.calculation, sample] as const))(
  '%s can be redone from its evidence',
  (_id, sample) => {
    assertEvidence(fluidCalculations, sample);
  },
);
