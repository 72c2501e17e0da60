import { runCalculation as evaluate } from '../../calculations/run-calculation.js';
import { signedInProcedure } from '../../trpc/procedures.js';
import { runCalculationInput, runCalculationOutput } from './run-calculation.schema.js';

/** One calculation of the trade, with the steps to redo it by hand. */
export const runCalculation = signedInProcedure
  .input(runCalculationInput)
  .output(runCalculationOutput)
  .mutation(({ input }) => evaluate(input.id, input.inputs));
