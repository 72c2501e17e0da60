import { money, offerSchema, positionSchema } from '@flangewise/model';
import { z } from 'zod';
import { OfferState, ReleaseKind } from '../../generated/enums.js';
import { id } from '../as-typed.js';

export const getOfferInput = z.object({
  id,
  /** The letter; without it the newest that the person may know of. */
  revision: z
    .string()
    .regex(/^[A-Z]{1,3}$/, 'a letter like A, B or AA is allowed')
    .optional(),
});

/** Customers see the sums of an offer and no price of an item: those are null. */
const positionFor = positionSchema.extend({ unitPrice: money.nullable(), total: money.nullable() });

export const getOfferOutput = z.object({
  id: z.string(),
  number: z.string(),
  revision: z.string(),
  state: z.enum(OfferState),
  systemId: z.string(),
  inquiryId: z.string(),
  /** Number of the frozen state of the system that is offered. */
  systemRevision: z.int(),
  offer: offerSchema.extend({ positions: z.array(positionFor) }),
  /** What keeps it from being sent, each a sentence. */
  blocking: z.array(z.string()),
  /** Releases that an approver has to give first. */
  waitsFor: z.array(z.enum(ReleaseKind)),
  releases: z.array(
    z.object({ what: z.enum(ReleaseKind), note: z.string(), by: z.string(), at: z.iso.datetime() }),
  ),
  /** The newest first. */
  revisions: z.array(
    z.object({
      revision: z.string(),
      state: z.enum(OfferState),
      author: z.string(),
      createdAt: z.iso.datetime(),
      sentAt: z.iso.datetime().nullable(),
      priceList: z.string(),
      systemRevision: z.int(),
      catalogueRevision: z.string(),
      ruleRevision: z.string(),
    }),
  ),
  /** To be had at `/api/offers/:id/documents/:name`. */
  documents: z.array(z.object({ name: z.string(), mediaType: z.string(), bytes: z.int() })),
});
