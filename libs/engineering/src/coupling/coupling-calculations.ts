import type { Calculation } from '../calculation.js';
import { canEddyLoss } from './can-eddy-loss.js';
import { gapTorqueRatio } from './gap-torque-ratio.js';
import { magnetDerating } from './magnet-derating.js';

/** Magnetic couplings and the stirrer shaft. */
export const couplingCalculations: readonly Calculation[] = [canEddyLoss, gapTorqueRatio, magnetDerating];
