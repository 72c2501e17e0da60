import { z } from 'zod';
import { quantity } from '../calculation.js';

/** A gas as people name it. */
export const gasField = z
  .string()
  .min(1)
  .meta({ description: 'Gas by CAS number or common name, for instance 1333-74-0 or hydrogen' });

export const gasTemperatureField = quantity(
  { unit: 'K', symbol: 'T', description: 'Temperature of the gas' },
  z.number().positive(),
);

export const absolutePressureField = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description }, z.number().positive());
