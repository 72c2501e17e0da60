import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { materialsCalculations } from './materials-calculations.js';

describe('materials agree with the reference cases', () => {
  it.each(referenceCases('materials').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(materialsCalculations, referenceCase);
    },
  );
});
