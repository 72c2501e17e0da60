import { auditProgress as howFar } from '../../catalogue/audit-revision.js';
import { catalogueReaderProcedure } from '../../trpc/procedures.js';
import { auditProgressInput, auditProgressOutput } from './audit-progress.schema.js';

/** How far the audit of a revision is; null where none is under way. */
export const auditProgress = catalogueReaderProcedure
  .input(auditProgressInput)
  .output(auditProgressOutput)
  .query(({ input }) => ({ progress: howFar(input.id) }));
