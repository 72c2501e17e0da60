import { auditRevision as lookThrough } from '../../catalogue/audit-revision.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { auditRevisionInput, auditRevisionOutput } from './audit-revision.schema.js';

/** Takes its time; whoever stops waiting stops it. */
export const auditRevision = catalogueReaderProcedure
  .input(auditRevisionInput)
  .output(auditRevisionOutput)
  .query(({ ctx, input, signal }) => lookThrough(ctx, input.id, signal));
