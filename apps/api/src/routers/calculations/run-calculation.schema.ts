import { evidenceSchema } from '@flangewise/model';
import { z } from 'zod';

export const runCalculationInput = z.object({
  id: z.string().max(100),
  /** By public name of the field, in SI; see the schema of the calculation. */
  inputs: z.record(z.string(), z.unknown()),
});

export const runCalculationOutput = evidenceSchema;
