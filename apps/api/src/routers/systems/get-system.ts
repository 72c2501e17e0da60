import { getSystem as findSystem } from '../../systems/get-system.js';
import { jobProcedure } from '../../trpc/procedures.js';
import { getSystemInput, getSystemOutput } from './get-system.schema.js';

export const getSystem = jobProcedure
  .input(getSystemInput)
  .output(getSystemOutput)
  .query(({ ctx, input }) => findSystem(ctx, input.id));
