import { z } from 'zod';
import { InquiryState } from '../../generated/enums.js';

export const listInquiriesOutput = z.array(
  z.object({
    id: z.string(),
    number: z.string(),
    title: z.string(),
    /** Null while nobody said for whom it is. */
    client: z.string().nullable(),
    state: z.enum(InquiryState),
    updatedAt: z.iso.datetime(),
    /** How many systems answer it. */
    systems: z.int(),
    /** How many offers the person may know of. */
    offers: z.int(),
  }),
);
