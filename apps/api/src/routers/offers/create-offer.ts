import { createOffer as makeOffer } from '../../offers/create-offer.js';
import { engineerProcedure } from '../../trpc/procedures.js';
import { createOfferInput, createOfferOutput } from './create-offer.schema.js';

export const createOffer = engineerProcedure
  .input(createOfferInput)
  .output(createOfferOutput)
  .mutation(({ ctx, input }) => makeOffer(ctx, input));
