import type { Calculation } from '../calculation.js';
import { fullyBaffledPowerNumber } from './fully-baffled-power-number.js';
import { gassedPowerRatio } from './gassed-power-ratio.js';
import { justSuspendedSpeed } from './just-suspended-speed.js';
import { laminarPower } from './laminar-power.js';
import { metznerOtto } from './metzner-otto.js';
import { power } from './power.js';
import { reynolds } from './reynolds.js';
import { ribbonLaminarConstant } from './ribbon-laminar-constant.js';
import { torque } from './torque.js';

/** Stirring: power, torque, speed limits, blending, suspension, gas. */
export const stirringCalculations: readonly Calculation[] = [
  fullyBaffledPowerNumber,
  gassedPowerRatio,
  justSuspendedSpeed,
  laminarPower,
  metznerOtto,
  power,
  reynolds,
  ribbonLaminarConstant,
  torque,
];
