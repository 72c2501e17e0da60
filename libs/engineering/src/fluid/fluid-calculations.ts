import type { Calculation } from '../calculation.js';
import { boilingTemperature } from './boiling-temperature.js';
import { chargedPressure } from './charged-pressure.js';
import { mixture } from './mixture.js';
import { hotVolume } from './hot-volume.js';
import { fluidProperties } from './properties.js';
import { totalPressure } from './total-pressure.js';
import { heatOfVaporisation } from './heat-of-vaporisation.js';
import { liquidConductivity } from './liquid-conductivity.js';
import { liquidDensity } from './liquid-density.js';
import { liquidFullFraction } from './liquid-full-fraction.js';
import { liquidFullPressureRise } from './liquid-full-pressure-rise.js';
import { liquidHeatCapacity } from './liquid-heat-capacity.js';
import { liquidViscosity } from './liquid-viscosity.js';
import { solutionDensity } from './solution-density.js';
import { solutionViscosity } from './solution-viscosity.js';
import { vapourPressure } from './vapour-pressure.js';

/** Properties of liquids and solutions, expansion and pressure of a charged liquid. */
export const fluidCalculations: readonly Calculation[] = [
  vapourPressure,
  boilingTemperature,
  liquidDensity,
  liquidHeatCapacity,
  liquidViscosity,
  liquidConductivity,
  heatOfVaporisation,
  liquidFullFraction,
  liquidFullPressureRise,
  solutionDensity,
  solutionViscosity,
  hotVolume,
  totalPressure,
  chargedPressure,
  mixture,
  fluidProperties,
];
