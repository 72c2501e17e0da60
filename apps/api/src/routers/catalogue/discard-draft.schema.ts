import { z } from 'zod';
import { id } from '../as-typed.js';

export const discardDraftInput = z.object({
  id,
  /** The version that was seen. */
  version: z.int().positive(),
});

export const discardDraftOutput = z.object({ version: z.int() });
