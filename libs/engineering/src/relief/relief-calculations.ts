import type { Calculation } from '../calculation.js';
import { burstPressureFromOperating } from './burst-pressure-from-operating.js';
import { burstPressureWindow } from './burst-pressure-window.js';
import { chokedFlowFunction } from './choked-flow-function.js';
import { criticalPressureRatio } from './critical-pressure-ratio.js';
import { discWindow } from './disc-window.js';
import { dischargedArea } from './discharged-area.js';
import { fireHeat } from './fire-heat.js';
import { gasArea } from './gas-area.js';
import { lineFlow } from './line-flow.js';
import { liquidArea } from './liquid-area.js';
import { omegaCriticalRatio } from './omega-critical-ratio.js';
import { regulatorFailedOpenFlow } from './regulator-failed-open-flow.js';
import { standardOrifice } from './standard-orifice.js';
import { steamArea } from './steam-area.js';
import { subsonicFlowFunction } from './subsonic-flow-function.js';
import { twoPhaseArea } from './two-phase-area.js';
import { ventBackPressure } from './vent-back-pressure.js';
import { ventThrust } from './vent-thrust.js';
import { viscosityCorrection } from './viscosity-correction.js';
import { worstInflow } from './worst-inflow.js';

/** Relief of overpressure: inflow, area, bursting disc, vent line. */
export const reliefCalculations: readonly Calculation[] = [
  burstPressureFromOperating,
  burstPressureWindow,
  chokedFlowFunction,
  criticalPressureRatio,
  discWindow,
  dischargedArea,
  fireHeat,
  gasArea,
  lineFlow,
  liquidArea,
  omegaCriticalRatio,
  regulatorFailedOpenFlow,
  standardOrifice,
  steamArea,
  subsonicFlowFunction,
  twoPhaseArea,
  ventBackPressure,
  ventThrust,
  viscosityCorrection,
  worstInflow,
];
