import type { Calculation } from '../calculation.js';
import { boltLoad } from './bolt-load.js';
import { boltProofStress } from './bolt-proof-stress.js';
import { boltStressArea } from './bolt-stress-area.js';
import { boltedCover } from './bolted-cover.js';
import { endForce } from './end-force.js';
import { gasketFactors } from './gasket-factors.js';
import { ratedForce } from './rated-force.js';
import { tighteningTorque } from './tightening-torque.js';

/** Closures: the force of the pressure and what holds against it. */
export const closureCalculations: readonly Calculation[] = [
  boltLoad,
  boltProofStress,
  boltStressArea,
  boltedCover,
  endForce,
  gasketFactors,
  ratedForce,
  tighteningTorque,
];
