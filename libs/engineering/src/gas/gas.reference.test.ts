import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { gasCalculations } from './gas-calculations.js';

describe('gas agrees with the reference cases', () => {
  it.each(referenceCases('gas').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(gasCalculations, referenceCase);
    },
  );
});
