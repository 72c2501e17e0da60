import { discardDraft as giveUp } from '../../catalogue/discard-draft.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { discardDraftInput, discardDraftOutput } from './discard-draft.schema.js';

export const discardDraft = keeperProcedure
  .input(discardDraftInput)
  .output(discardDraftOutput)
  .mutation(async ({ ctx, input: { id, version } }) => ({
    version: await giveUp(ctx, { draftId: id, version }),
  }));
