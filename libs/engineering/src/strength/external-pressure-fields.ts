import { z } from 'zod';
import { quantity } from '../calculation.js';

export const elasticModulusField = quantity(
  { unit: 'Pa', symbol: 'E', description: 'Modulus of elasticity at the temperature' },
  z.number().positive(),
);

export const elasticLimitField = quantity(
  {
    unit: 'Pa',
    symbol: 'σ_e',
    description: 'Nominal elastic limit: Rp0.2 at temperature, divided by 1.25 for austenitic steel',
  },
  z.number().positive(),
);

/** Safety factor of EN 13445-3 clause 8: 1.5 in service, 1.1 under test. */
export const safetyFactorField = quantity(
  { unit: '1', symbol: 'S', description: 'Safety factor: 1.5 in service, 1.1 at the test' },
  z.number().min(1).max(10),
);
