import type { Calculation } from '../calculation.js';
import { boltLoad } from './bolt-load.js';
import { boltStressArea } from './bolt-stress-area.js';
import { endForce } from './end-force.js';
import { tighteningTorque } from './tightening-torque.js';

/** Closures: the force of the pressure and what holds against it. */
export const closureCalculations: readonly Calculation[] = [
  boltLoad,
  boltStressArea,
  endForce,
  tighteningTorque,
];
