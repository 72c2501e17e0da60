import type { Calculation } from '../calculation.js';
import { specialVessel } from './special-vessel.js';

/** Parts made for one order. */
export const specialCalculations: readonly Calculation[] = [specialVessel];
