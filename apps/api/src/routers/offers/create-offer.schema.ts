import { z } from 'zod';
import { id } from '../as-typed.js';
import { offerLetter, percent } from './offer-terms.schema.js';

export const createOfferInput = z.object({
  systemId: id,
  discountPercent: percent.optional(),
  taxPercent: percent.optional(),
  date: z.iso.date('a calendar date like 2026-11-24 is allowed'),
});

export const createOfferOutput = offerLetter;
