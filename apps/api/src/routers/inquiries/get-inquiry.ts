import { getInquiry as findInquiry } from '../../inquiries/get-inquiry.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { getInquiryInput, getInquiryOutput } from './get-inquiry.schema.js';

export const getInquiry = jobProcedure
  .input(getInquiryInput)
  .output(getInquiryOutput)
  .query(({ ctx, input }) => findInquiry(ctx, input.id));
