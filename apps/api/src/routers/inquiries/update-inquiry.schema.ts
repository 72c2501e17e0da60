import { inquirySchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped, id } from '../as-typed.js';

export const updateInquiryInput = z.object({
  id,
  document: asTyped(inquirySchema),
  /** The version that was seen; without it the last word wins. */
  version: z.int().positive().optional(),
});

export const updateInquiryOutput = z.object({ id: z.string(), number: z.string(), version: z.int() });
