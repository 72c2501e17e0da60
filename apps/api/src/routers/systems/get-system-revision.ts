import { getSystemRevision as findSystemRevision } from '../../systems/get-system-revision.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { getSystemRevisionInput, getSystemRevisionOutput } from './get-system-revision.schema.js';

export const getSystemRevision = jobProcedure
  .input(getSystemRevisionInput)
  .output(getSystemRevisionOutput)
  .query(({ ctx, input }) => findSystemRevision(ctx, input));
