import type { Calculation } from '../calculation.js';
import { dustSurfaceLimit } from './dust-surface-limit.js';
import { equipmentCategory } from './equipment-category.js';
import { gasSurfaceLimit } from './gas-surface-limit.js';
import { requiredMarking } from './required-marking.js';
import { ignitionOfSubstance } from './ignition-of-substance.js';
import { temperatureClass } from './temperature-class.js';

/** Explosive atmospheres. */
export const hazardousAreaCalculations: readonly Calculation[] = [
  dustSurfaceLimit,
  equipmentCategory,
  gasSurfaceLimit,
  ignitionOfSubstance,
  requiredMarking,
  temperatureClass,
];
