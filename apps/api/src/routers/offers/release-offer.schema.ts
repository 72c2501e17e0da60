import { z } from 'zod';
import { ReleaseKind } from '../../generated/enums.js';
import { id } from '../as-typed.js';

export const releaseOfferInput = z.object({
  id,
  what: z.enum(ReleaseKind),
  /** Why it may go out. */
  note: z.string().trim().min(1, 'say why: 1 to 2000 characters are allowed').max(2000),
});

export const releaseOfferOutput = z.object({
  /** What still keeps it from being sent. */
  blocking: z.array(z.string()),
  waitsFor: z.array(z.enum(ReleaseKind)),
});
