import { getOffer as findOffer } from '../../offers/get-offer.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { getOfferInput, getOfferOutput } from './get-offer.schema.js';

export const getOffer = jobProcedure
  .input(getOfferInput)
  .output(getOfferOutput)
  .query(({ ctx, input }) => findOffer(ctx, input));
