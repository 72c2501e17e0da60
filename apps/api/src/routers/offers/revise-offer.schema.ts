import { calendarDate } from '@flangewise/model';
import { z } from 'zod';
import { id } from '../as-typed.js';
import { offerLetter, percent } from './offer-terms.schema.js';

export const reviseOfferInput = z.object({
  id,
  /** What is not given stays as the revision before has it. */
  discountPercent: percent.optional(),
  taxPercent: percent.optional(),
  /** Of the new letter; today where it is not given. */
  date: calendarDate.optional(),
});

export const reviseOfferOutput = offerLetter;
