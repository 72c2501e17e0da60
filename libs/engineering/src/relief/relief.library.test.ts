import { describe, it } from 'vitest';
import { assertReferenceCase, type ReferenceCase } from '../reference-cases.js';
import cases from './fluids-library-cases.json';
import { reliefCalculations } from './relief-calculations.js';

/**
 * Random states computed with the open library fluids 1.3.1. The tolerances cover the rounded constants of the
 * standards that the library keeps (gas 17.9 and 0.03948; valves N6 and N9).
 */
describe('relief agrees with an independent library', () => {
  it.each((cases as unknown as ReferenceCase[]).map((item) => [item.id, item] as const))(
    '%s',
    (_id, item) => {
      assertReferenceCase(reliefCalculations, item);
    },
  );
});
