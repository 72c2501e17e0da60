import { createSystem as keepSystem } from '../../systems/create-system.js';
import { engineerProcedure } from '../../trpc/procedures.js';
import { createSystemInput, createSystemOutput } from './create-system.schema.js';

export const createSystem = engineerProcedure
  .input(createSystemInput)
  .output(createSystemOutput)
  .mutation(({ ctx, input }) => keepSystem(ctx, input));
