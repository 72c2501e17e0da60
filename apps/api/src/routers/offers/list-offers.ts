import { findOffers } from '../../offers/find-offers.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { listOffersInput, listOffersOutput } from './list-offers.schema.js';

export const listOffers = jobProcedure
  .input(listOffersInput)
  .output(listOffersOutput)
  .query(({ ctx, input }) => findOffers(ctx, input));
