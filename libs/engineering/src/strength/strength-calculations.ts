import type { Calculation } from '../calculation.js';
import { thickWallStress } from './thick-wall-stress.js';

/** Strength of pressure parts. */
export const strengthCalculations: readonly Calculation[] = [thickWallStress];
