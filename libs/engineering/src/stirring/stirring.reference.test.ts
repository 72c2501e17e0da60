import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { stirringCalculations } from './stirring-calculations.js';

describe('stirring agrees with the reference cases', () => {
  it.each(referenceCases('stirring').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(stirringCalculations, referenceCase);
    },
  );
});
