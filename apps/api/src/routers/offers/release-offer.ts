import { releaseOffer as giveRelease } from '../../offers/release-offer.js';
import { approverProcedure } from '../../trpc/procedures.js';
import { releaseOfferInput, releaseOfferOutput } from './release-offer.schema.js';

export const releaseOffer = approverProcedure
  .input(releaseOfferInput)
  .output(releaseOfferOutput)
  .mutation(({ ctx, input }) => giveRelease(ctx, input));
