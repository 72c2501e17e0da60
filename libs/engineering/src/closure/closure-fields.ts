import { z } from 'zod';
import { quantity } from '../calculation.js';

export const closurePressureField = quantity(
  { unit: 'Pa', symbol: 'P', description: 'Internal pressure over external (gauge)' },
  z.number().min(0),
);

export const gasketFactorField = quantity(
  { unit: '1', symbol: 'm', description: 'Gasket factor, 0 for a self-energising seal' },
  z.number().min(0).max(20),
);

export const seatingStressField = quantity(
  { unit: 'Pa', symbol: 'y', description: 'Seating stress, 0 for a self-energising seal' },
  z.number().min(0),
);

export const force = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'N', symbol, description });

export const closureLength = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive());
