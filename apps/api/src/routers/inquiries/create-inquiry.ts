import { createInquiry as enterInquiry } from '../../inquiries/create-inquiry.js';
import { inquirerProcedure } from '../../trpc/procedures.js';
import { createInquiryInput, createInquiryOutput } from './create-inquiry.schema.js';

export const createInquiry = inquirerProcedure
  .input(createInquiryInput)
  .output(createInquiryOutput)
  .mutation(({ ctx, input }) => enterInquiry(ctx, input.document));
