import { candidateSchema, solveAnswerSchema, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { id, typedDocument } from '../as-typed.js';

export const solveInquiryInput = z.object({
  inquiryId: id,
  /** At most this many candidates. */
  most: z.int().min(1).max(12).optional(),
});

export const solveInquiryOutput = solveAnswerSchema.extend({
  candidates: z.array(candidateSchema.extend({ system: typedDocument(systemSchema) })),
});
