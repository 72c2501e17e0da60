import { reviseOffer as makeLetter } from '../../offers/revise-offer.js';
import { salesProcedure } from '../../trpc/procedures.js';
import { reviseOfferInput, reviseOfferOutput } from './revise-offer.schema.js';

const today = (): string => new Date().toISOString().slice(0, 10);

export const reviseOffer = salesProcedure
  .input(reviseOfferInput)
  .output(reviseOfferOutput)
  .mutation(({ ctx, input }) => makeLetter(ctx, { ...input, date: input.date ?? today() }));
