import { createSystemRevision } from '../../systems/freeze-system.js';
import { engineerProcedure } from '../../trpc/procedures.js';
import { freezeSystemInput, freezeSystemOutput } from './freeze-system.schema.js';

export const freezeSystem = engineerProcedure
  .input(freezeSystemInput)
  .output(freezeSystemOutput)
  .mutation(({ ctx, input }) => createSystemRevision(ctx, input.id));
