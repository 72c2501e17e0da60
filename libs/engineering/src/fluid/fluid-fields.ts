import { z } from 'zod';
import { quantity } from '../calculation.js';

/** A substance as people name it. */
export const substanceField = z
  .string()
  .min(1)
  .meta({ description: 'Substance by CAS number or common name, for instance 67-56-1 or methanol' });

/** Solute of an aqueous solution as people name it. */
export const soluteField = z.string().min(1).meta({
  description: 'Solute in water by CAS number or common name, for instance 1310-73-2 or caustic soda',
});

export const temperatureField = (description: string): z.ZodNumber =>
  quantity({ unit: 'K', symbol: 'T', description }, z.number().positive());

export const massFractionField = quantity(
  { unit: '1', symbol: 'w', description: 'Mass fraction of the solute' },
  z.number().min(0).max(1),
);
