import type { Calculation } from '../calculation.js';
import { canEddyLoss } from './can-eddy-loss.js';
import { deratedTorque } from './derated-torque.js';
import { gapTorqueRatio } from './gap-torque-ratio.js';
import { magnetDerating } from './magnet-derating.js';
import { shaftCriticalSpeed } from './shaft-critical-speed.js';

/** Magnetic couplings and the stirrer shaft. */
export const couplingCalculations: readonly Calculation[] = [
  canEddyLoss,
  deratedTorque,
  gapTorqueRatio,
  magnetDerating,
  shaftCriticalSpeed,
];
