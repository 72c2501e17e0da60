import type { Calculation } from '../calculation.js';
import { allowableStress } from './allowable-stress.js';
import { compatibility } from './compatibility.js';
import { designStress } from './design-stress.js';
import { proofStrength } from './proof-strength.js';

/** Strength and corrosion of materials. */
export const materialsCalculations: readonly Calculation[] = [
  allowableStress,
  compatibility,
  designStress,
  proofStrength,
];
