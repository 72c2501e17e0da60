import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { geometryCalculations } from './geometry-calculations.js';

describe('geometry agrees with the reference cases', () => {
  it.each(referenceCases('geometry').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(geometryCalculations, referenceCase);
    },
  );
});
