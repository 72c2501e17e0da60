import type { Calculation } from '../calculation.js';
import { adiabaticRise } from './adiabatic-rise.js';
import { batchTimeFlowingMedium } from './batch-time-flowing-medium.js';
import { batchTimeIsothermal } from './batch-time-isothermal.js';
import { batchTimeVariableCoefficient } from './batch-time-variable-coefficient.js';
import { coilArea } from './coil-area.js';
import { coilInsideCoefficient } from './coil-inside-coefficient.js';
import { coilOutsideCoefficient } from './coil-outside-coefficient.js';
import { coolingDuty } from './cooling-duty.js';
import { heaterPower } from './heater-power.js';
import { overallCoefficient } from './overall-coefficient.js';

/** Heat transfer to and from a stirred vessel, heating and cooling times. */
export const heatCalculations: readonly Calculation[] = [
  batchTimeIsothermal,
  batchTimeFlowingMedium,
  batchTimeVariableCoefficient,
  heaterPower,
  coolingDuty,
  coilArea,
  coilInsideCoefficient,
  coilOutsideCoefficient,
  overallCoefficient,
  adiabaticRise,
];
