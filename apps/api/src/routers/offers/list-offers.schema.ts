import { money } from '@flangewise/model';
import { z } from 'zod';
import { OfferState } from '../../generated/enums.js';
import { id } from '../as-typed.js';

export const listOffersInput = z.object({ inquiryId: id.optional() }).default({});

/** An offer by its newest revision that the person may know of. */
export const offerRow = z.object({
  id: z.string(),
  number: z.string(),
  revision: z.string(),
  state: z.enum(OfferState),
  title: z.string(),
  client: z.string().nullable(),
  date: z.iso.date().nullable(),
  total: money,
  currency: z.string(),
  systemId: z.string(),
  /** Letter of the system within its inquiry. */
  system: z.string(),
  inquiryId: z.string(),
  createdAt: z.iso.datetime(),
  sentAt: z.iso.datetime().nullable(),
});

export const listOffersOutput = z.array(offerRow);
