import type { Calculation } from '../calculation.js';
import { centreOfGravity } from './centre-of-gravity.js';
import { dishedEnd } from './dished-end.js';
import { headroom } from './headroom.js';
import { vessel } from './vessel.js';
import { vesselCentreOfGravity } from './vessel-centre-of-gravity.js';

/** Volumes, surfaces, masses, centres of gravity and heights. */
export const geometryCalculations: readonly Calculation[] = [
  centreOfGravity,
  dishedEnd,
  headroom,
  vessel,
  vesselCentreOfGravity,
];
