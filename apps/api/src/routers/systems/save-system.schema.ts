import { assessmentSchema, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped, id } from '../as-typed.js';

export const saveSystemInput = z.object({
  id,
  document: asTyped(systemSchema),
  /** The version that was seen when the change began. */
  version: z.int().positive(),
});

export const saveSystemOutput = z.object({ version: z.int(), assessment: assessmentSchema });
