import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { strengthCalculations } from './strength-calculations.js';

describe('strength agrees with the reference cases', () => {
  it.each(referenceCases('strength').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(strengthCalculations, referenceCase);
    },
  );
});
