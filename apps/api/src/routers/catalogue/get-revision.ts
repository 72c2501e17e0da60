import { getRevision as findRevision } from '../../catalogue/get-revision.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { getRevisionInput, getRevisionOutput } from './get-revision.schema.js';

export const getRevision = catalogueReaderProcedure
  .input(getRevisionInput)
  .output(getRevisionOutput)
  .query(async ({ ctx, input }) => ({ revision: await findRevision(ctx, input.id) }));
