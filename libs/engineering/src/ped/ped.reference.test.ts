import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { pedCalculations } from './ped-calculations.js';

describe('classification of pressure equipment agrees with the reference cases', () => {
  it.each(referenceCases('ped').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(pedCalculations, referenceCase);
    },
  );
});
