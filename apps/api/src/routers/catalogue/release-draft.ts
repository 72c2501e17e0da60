import { releaseDraft as putIntoForce } from '../../catalogue/release-draft.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { releaseDraftInput, releaseDraftOutput } from './release-draft.schema.js';

export const releaseDraft = keeperProcedure
  .input(releaseDraftInput)
  .output(releaseDraftOutput)
  .mutation(({ ctx, input }) => putIntoForce(ctx, input));
