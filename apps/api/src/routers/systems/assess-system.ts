import { jobProcedure } from '../../trpc/procedures.js';
import { assessSystemInput, assessSystemOutput } from './assess-system.schema.js';

/** Every rule on a system that need not be saved. Sent by POST: a document does not fit into an address. */
export const assessSystem = jobProcedure
  .input(assessSystemInput)
  .output(assessSystemOutput)
  .mutation(({ ctx, input }) => ctx.workshop.assess(input.system));
