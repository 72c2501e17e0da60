import { seesPrices } from '../../auth/visible.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { explainSystemInput, explainSystemOutput } from './explain-system.schema.js';

/** What keeps a system from being whole, and the smallest changes that mend it. Sent by POST: a document does not fit into an address. */
export const explainSystem = jobProcedure
  .input(explainSystemInput)
  .output(explainSystemOutput)
  .mutation(({ ctx, input }) =>
    ctx.workshop.run('explain', {
      system: input.system,
      priceList: seesPrices(ctx.person) ? ctx.workshop.priceListFor(input.system).id : null,
    }),
  );
