import { updateInquiry as saveInquiry } from '../../inquiries/update-inquiry.js';
import { inquirerProcedure } from '../../trpc/procedures.js';
import { updateInquiryInput, updateInquiryOutput } from './update-inquiry.schema.js';

export const updateInquiry = inquirerProcedure
  .input(updateInquiryInput)
  .output(updateInquiryOutput)
  .mutation(({ ctx, input }) => saveInquiry(ctx, input));
