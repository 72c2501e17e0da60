import type { Calculation } from '../calculation.js';
import { ambientLoss } from './ambient-loss.js';
import { gasUptakeLimit } from './gas-uptake-limit.js';
import { heatTransferFluid } from './heat-transfer-fluid.js';
import { heatUp } from './heat-up.js';
import { circulatorCurve } from './circulator-curve.js';
import { heatUpCurve } from './heat-up-curve.js';
import { jacketFilm } from './jacket-film.js';
import { mediumFlowForDuty } from './medium-flow-for-duty.js';
import { overallCoefficientBand } from './overall-coefficient-band.js';
import { removableHeat } from './removable-heat.js';
import { typicalCoefficient } from './typical-coefficient.js';
import { vesselFilm } from './vessel-film.js';
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
  heatUp,
  heatUpCurve,
  circulatorCurve,
  removableHeat,
  mediumFlowForDuty,
  gasUptakeLimit,
  ambientLoss,
  jacketFilm,
  vesselFilm,
  overallCoefficientBand,
  typicalCoefficient,
  heatTransferFluid,
];
