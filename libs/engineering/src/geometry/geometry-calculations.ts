import type { Calculation } from '../calculation.js';
import { dishedEnd } from './dished-end.js';
import { headroom } from './headroom.js';
import { vessel } from './vessel.js';

/** Volumes, surfaces, masses and heights. */
export const geometryCalculations: readonly Calculation[] = [dishedEnd, headroom, vessel];
