import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { liftingCalculations } from './lifting-calculations.js';

describe('manual handling agrees with the reference cases', () => {
  it.each(referenceCases('lifting').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(liftingCalculations, referenceCase);
    },
  );
});
