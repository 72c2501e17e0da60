import { inquirySchema, openPointSchema } from '@flangewise/model';
import { z } from 'zod';
import { InquiryState } from '../../generated/enums.js';
import { id, typedDocument } from '../as-typed.js';
import { offerRow } from '../offers/list-offers.schema.js';

export const getInquiryInput = z.object({ id });

export const getInquiryOutput = z.object({
  id: z.string(),
  number: z.string(),
  title: z.string(),
  state: z.enum(InquiryState),
  clientId: z.string().nullable(),
  /** The engineer who answers for it; null until one takes it up. */
  owner: z.string().nullable(),
  /** Whether the person may change it and its systems. */
  mayChange: z.boolean(),
  version: z.int(),
  updatedAt: z.iso.datetime(),
  document: typedDocument(inquirySchema),
  openPoints: z.array(openPointSchema),
  systems: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      title: z.string(),
      version: z.int(),
      /** Who saved it last. */
      author: z.string(),
      updatedAt: z.iso.datetime(),
    }),
  ),
  offers: z.array(offerRow),
});
