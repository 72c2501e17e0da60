import { saveSystem as keepSystem } from '../../systems/save-system.js';
import { inquirerProcedure } from '../../trpc/procedures.js';
import { saveSystemInput, saveSystemOutput } from './save-system.schema.js';

export const saveSystem = inquirerProcedure
  .input(saveSystemInput)
  .output(saveSystemOutput)
  .mutation(({ ctx, input }) => keepSystem(ctx, input));
