import { solveInquiry as findSystems } from '../../systems/solve-inquiry.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { solveInquiryInput, solveInquiryOutput } from './solve-inquiry.schema.js';

export const solveInquiry = jobProcedure
  .input(solveInquiryInput)
  .output(solveInquiryOutput)
  .query(({ ctx, input }) => findSystems(ctx, input));
