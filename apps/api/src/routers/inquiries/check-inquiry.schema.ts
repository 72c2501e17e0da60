import { openPointSchema } from '@flangewise/model';
import { z } from 'zod';
import { inputTrouble } from '../as-typed.js';

/** Anything: what is wrong with it is the answer. */
export const checkInquiryInput = z.object({ document: z.unknown() });

export const checkInquiryOutput = z.object({
  /** Fields that cannot be used: where, what stands there, what is allowed. */
  troubles: z.array(inputTrouble),
  openPoints: z.array(openPointSchema),
});
