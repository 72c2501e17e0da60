import { z } from 'zod';
import { id } from '../as-typed.js';

export const sendOfferInput = z.object({ id });

export const sendOfferOutput = z.object({
  number: z.string(),
  revision: z.string(),
  sentAt: z.iso.datetime(),
});
