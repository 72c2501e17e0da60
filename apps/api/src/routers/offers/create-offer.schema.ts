import { calendarDate } from '@flangewise/model';
import { z } from 'zod';
import { id } from '../as-typed.js';
import { offerLetter, percent } from './offer-terms.schema.js';

export const createOfferInput = z.object({
  systemId: id,
  discountPercent: percent.optional(),
  taxPercent: percent.optional(),
  date: calendarDate,
});

export const createOfferOutput = offerLetter;
