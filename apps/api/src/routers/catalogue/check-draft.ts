import { checkDraft as findHindrances } from '../../catalogue/check-draft.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { checkDraftInput, checkDraftOutput } from './check-draft.schema.js';

export const checkDraft = catalogueReaderProcedure
  .input(checkDraftInput)
  .output(checkDraftOutput)
  .query(({ ctx, input }) => findHindrances(ctx, input.id));
