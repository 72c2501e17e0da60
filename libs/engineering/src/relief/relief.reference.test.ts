import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { reliefCalculations } from './relief-calculations.js';

describe('relief agrees with the reference cases', () => {
  it.each(referenceCases('relief').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(reliefCalculations, referenceCase);
    },
  );
});
