import { sendOffer as putOut } from '../../offers/send-offer.js';
import { salesProcedure } from '../../trpc/procedures.js';
import { sendOfferInput, sendOfferOutput } from './send-offer.schema.js';

export const sendOffer = salesProcedure
  .input(sendOfferInput)
  .output(sendOfferOutput)
  .mutation(({ ctx, input }) => putOut(ctx, input.id));
