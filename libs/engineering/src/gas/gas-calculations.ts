import type { Calculation } from '../calculation.js';
import { compressibilityFactor } from './compressibility-factor.js';
import { dosedAmount } from './dosed-amount.js';

/** Real gases: compressibility, density, dosing from a reservoir. */
export const gasCalculations: readonly Calculation[] = [compressibilityFactor, dosedAmount];
