import { compareRevisions as findDifference } from '../../catalogue/compare-revisions.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { compareRevisionsInput, compareRevisionsOutput } from './compare-revisions.schema.js';

export const compareRevisions = catalogueReaderProcedure
  .input(compareRevisionsInput)
  .output(compareRevisionsOutput)
  .query(({ ctx, input }) => findDifference(ctx, input));
