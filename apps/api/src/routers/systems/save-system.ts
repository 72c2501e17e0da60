import { saveSystem as keepSystem } from '../../systems/save-system.js';
import { engineerProcedure } from '../../trpc/procedures.js';
import { saveSystemInput, saveSystemOutput } from './save-system.schema.js';

export const saveSystem = engineerProcedure
  .input(saveSystemInput)
  .output(saveSystemOutput)
  .mutation(({ ctx, input }) => keepSystem(ctx, input));
