import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { fluidCalculations } from './fluid-calculations.js';

describe('fluid agrees with the reference cases', () => {
  it.each(referenceCases('fluid').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(fluidCalculations, referenceCase);
    },
  );
});
