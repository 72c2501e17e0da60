import type { Calculation } from '../calculation.js';
import { batchPath } from './batch-path.js';
import { blendTime } from './blend-time.js';
import { fullyBaffledPowerNumber } from './fully-baffled-power-number.js';
import { gassedPowerRatio } from './gassed-power-ratio.js';
import { highestSpeed } from './highest-speed.js';
import { impellerPower } from './impeller-power.js';
import { impellerReynolds } from './impeller-reynolds.js';
import { impellerTorque } from './impeller-torque.js';
import { justSuspendedSpeed } from './just-suspended-speed.js';
import { laminarPower } from './laminar-power.js';
import { metznerOtto } from './metzner-otto.js';
import { motorPower } from './motor-power.js';
import { powerNumber } from './power-number.js';
import { ribbonLaminarConstant } from './ribbon-laminar-constant.js';
import { shaftTorque } from './shaft-torque.js';
import { metznerOttoConstant, zwieteringConstant } from './shear-and-suspension-constants.js';
import { viscosityRange } from './viscosity-range.js';

/** Stirring: power, torque, speed limits, blending, suspension, gas. */
export const stirringCalculations: readonly Calculation[] = [
  batchPath,
  blendTime,
  fullyBaffledPowerNumber,
  gassedPowerRatio,
  highestSpeed,
  impellerPower,
  impellerReynolds,
  impellerTorque,
  justSuspendedSpeed,
  laminarPower,
  metznerOtto,
  metznerOttoConstant,
  motorPower,
  powerNumber,
  ribbonLaminarConstant,
  shaftTorque,
  viscosityRange,
  zwieteringConstant,
];
