import { findHeads } from '../../catalogue/revision-head.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { listRevisionsOutput } from './list-revisions.schema.js';

/** All revisions and drafts, the newest first. */
export const listRevisions = catalogueReaderProcedure
  .output(listRevisionsOutput)
  .query(async ({ ctx }) => ({ revisions: await findHeads(ctx.database) }));
