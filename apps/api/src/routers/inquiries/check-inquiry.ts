import { checkInquiry as findTroubles } from '../../inquiries/check-inquiry.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { checkInquiryInput, checkInquiryOutput } from './check-inquiry.schema.js';

/** Troubles and open points of an inquiry, without saving it. Sent by POST: a document does not fit into an address. */
export const checkInquiry = jobProcedure
  .input(checkInquiryInput)
  .output(checkInquiryOutput)
  .mutation(({ ctx, input }) => findTroubles(ctx.workshop, input.document));
