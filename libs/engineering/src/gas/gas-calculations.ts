import type { Calculation } from '../calculation.js';
import { compressibilityFactor } from './compressibility-factor.js';
import { gasDensity } from './gas-density.js';
import { uptakeReservoir } from './uptake-reservoir.js';
import { dosedAmount } from './dosed-amount.js';

/** Real gases: compressibility, density, dosing from a reservoir. */
export const gasCalculations: readonly Calculation[] = [
  compressibilityFactor,
  gasDensity,
  dosedAmount,
  uptakeReservoir,
];
