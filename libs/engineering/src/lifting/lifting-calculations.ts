import type { Calculation } from '../calculation.js';
import { handledMass } from './handled-mass.js';
import { recommendedWeight } from './recommended-weight.js';

/** Manual handling. */
export const liftingCalculations: readonly Calculation[] = [handledMass, recommendedWeight];
