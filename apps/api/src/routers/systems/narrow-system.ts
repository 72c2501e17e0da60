import { jobProcedure } from '../../trpc/procedures.js';
import { narrowSystemInput, narrowSystemOutput } from './narrow-system.schema.js';

/** What still leads to a valid whole, slot by slot. Sent by POST: a document does not fit into an address. */
export const narrowSystem = jobProcedure
  .input(narrowSystemInput)
  .output(narrowSystemOutput)
  .mutation(({ ctx, input }) => ctx.workshop.run('narrow', { system: input.system }));
