import { findCalculations } from '../../calculations/find-calculations.js';
import { signedInProcedure } from '../../trpc/procedures.js';
import { listCalculationsOutput } from './list-calculations.schema.js';

export const listCalculations = signedInProcedure
  .output(listCalculationsOutput)
  .query(() => [...findCalculations()]);
