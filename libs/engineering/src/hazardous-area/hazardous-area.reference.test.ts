import { describe, it } from 'vitest';
import { assertReferenceCase, referenceCases } from '../reference-cases.js';
import { hazardousAreaCalculations } from './hazardous-area-calculations.js';

describe('explosive atmospheres agree with the reference cases', () => {
  it.each(referenceCases('hazardousArea').map((referenceCase) => [referenceCase.id, referenceCase] as const))(
    '%s',
    (_id, referenceCase) => {
      assertReferenceCase(hazardousAreaCalculations, referenceCase);
    },
  );
});
