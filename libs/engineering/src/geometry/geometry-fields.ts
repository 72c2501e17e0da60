import { z } from 'zod';
import { quantity } from '../calculation.js';

/** A length above zero. */
export const lengthField = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive());

/** A length that may be zero. */
export const extentField = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().min(0));

export const coneHalfAngleField = quantity(
  {
    unit: 'deg',
    symbol: 'α',
    description: 'Half of the opening angle of a cone; needed for the conical form',
  },
  z.number().min(10).max(75),
);

export const volume = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm3', symbol, description });

export const area = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm2', symbol, description });

export const mass = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'kg', symbol, description });

export const distance = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description });
