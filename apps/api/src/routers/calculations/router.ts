import { router } from '../../trpc/procedures.js';
import { listCalculations } from './list-calculations.js';
import { runCalculation } from './run-calculation.js';

export const calculationsRouter = router({ list: listCalculations, run: runCalculation });
