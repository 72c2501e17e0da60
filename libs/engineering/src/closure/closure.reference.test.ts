import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { closureCalculations } from './closure-calculations.js';

describe('closure agrees with the reference cases', () => {
  it.each(referenceCases('closure').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(closureCalculations, referenceCase);
    },
  );
});
