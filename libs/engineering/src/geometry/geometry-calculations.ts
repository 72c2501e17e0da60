import type { Calculation } from '../calculation.js';
import { dishedEnd } from './dished-end.js';

/** Volumes, surfaces, masses and heights. */
export const geometryCalculations: readonly Calculation[] = [dishedEnd];
