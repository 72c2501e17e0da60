import { createSystem as keepSystem } from '../../systems/create-system.js';
import { inquirerProcedure } from '../../trpc/procedures.js';
import { createSystemInput, createSystemOutput } from './create-system.schema.js';

export const createSystem = inquirerProcedure
  .input(createSystemInput)
  .output(createSystemOutput)
  .mutation(({ ctx, input }) => keepSystem(ctx, input));
