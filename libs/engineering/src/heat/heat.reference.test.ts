import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { heatCalculations } from './heat-calculations.js';

describe('heat agrees with the reference cases', () => {
  it.each(referenceCases('heat').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(heatCalculations, referenceCase);
    },
  );
});
