import { openDraft as beginDraft } from '../../catalogue/open-draft.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { openDraftInput, openDraftOutput } from './open-draft.schema.js';

export const openDraft = keeperProcedure
  .input(openDraftInput)
  .output(openDraftOutput)
  .mutation(async ({ ctx }) => ({ revision: await beginDraft(ctx) }));
