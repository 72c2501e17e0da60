import { z } from 'zod';
import { id } from '../as-typed.js';

export const releaseDraftInput = z.object({
  id,
  /** The version that was seen. */
  version: z.int().positive(),
  /** Why it is released. */
  note: z.string().trim().min(1, 'say why: 1 to 2000 characters are allowed').max(2000),
});

export const releaseDraftOutput = z.object({
  id: z.string(),
  name: z.string(),
  releasedAt: z.iso.datetime(),
});
