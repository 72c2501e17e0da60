import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { couplingCalculations } from './coupling-calculations.js';

describe('coupling agrees with the reference cases', () => {
  it.each(referenceCases('coupling').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(couplingCalculations, referenceCase);
    },
  );
});
