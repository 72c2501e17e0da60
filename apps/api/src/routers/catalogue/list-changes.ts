import { findChanges } from '../../catalogue/find-changes.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { listChangesInput, listChangesOutput } from './list-changes.schema.js';

/** Who did what to a revision while it was a draft, the last first. */
export const listChanges = catalogueReaderProcedure
  .input(listChangesInput)
  .output(listChangesOutput)
  .query(async ({ ctx, input }) => ({ changes: await findChanges(ctx, input.id) }));
