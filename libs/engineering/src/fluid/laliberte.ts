import type { Outcome } from '@flangewise/model';
import { succeed } from '@flangewise/model';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import type { AqueousSolution } from './aqueous-solution-data.js';

const zeroCelsiusK = 273.15;

/** Below this mass fraction a solution is water within 0.1 %; the powers of w in the forms run off to infinity there. */
const asWater = 1e-4;

/** State of a solution of one solute. */
export interface SolutionState {
  readonly massFraction: number;
  readonly temperatureK: number;
}

/** Density of water [kg/m³] at t °C (Laliberté and Cooper 2004). */
export const laliberteWaterDensity = (t: number): number =>
  (((((-2.8054253e-10 * t + 1.0556302e-7) * t - 4.6170461e-5) * t - 0.0079870401) * t + 16.945176) * t +
    999.83952) /
  (1 + 0.01687985 * t);

/** Viscosity of water [mPa·s] at t °C (Laliberté 2007). */
export const laliberteWaterViscosity = (t: number): number =>
  (t + 246) / ((0.05594 * t + 5.2842) * t + 137.37);

const coefficient = (coefficients: readonly number[], index: number): number => coefficients[index] ?? 0;

/**
 * Density of an aqueous solution [kg/m³].
 *
 *   1/ρ = (1 − w)/ρ_w + w/ρ_app,  ρ_app = (c0 w + c1) exp(10⁻⁶ (t + c4)²) / (w + c2 + c3 t)
 */
export const laliberteDensity = (solution: AqueousSolution, state: SolutionState): number => {
  const { massFraction: w, temperatureK } = state;
  const t = temperatureK - zeroCelsiusK;
  const c = (index: number): number => coefficient(solution.density.coefficients, index);
  const apparent = ((c(0) * w + c(1)) * Math.exp(1e-6 * (t + c(4)) ** 2)) / (w + c(2) + c(3) * t);
  return 1 / ((1 - w) / laliberteWaterDensity(t) + w / apparent);
};

/**
 * Viscosity of an aqueous solution [Pa·s].
 *
 *   ln μ = (1 − w) ln μ_w + w ln μ_s,  μ_s = exp((v1 w^v2 + v3)/(v4 t + 1)) / (v5 w^v6 + 1)   [mPa·s]
 */
export const laliberteViscosity = (solution: AqueousSolution, state: SolutionState): number => {
  const { massFraction: w, temperatureK } = state;
  const t = temperatureK - zeroCelsiusK;
  if (w < asWater) return laliberteWaterViscosity(t) / 1000;
  const v = (index: number): number => coefficient(solution.viscosity.coefficients, index - 1);
  const solute = Math.exp((v(1) * w ** v(2) + v(3)) / (v(4) * t + 1)) / (v(5) * w ** v(6) + 1);
  return (laliberteWaterViscosity(t) ** (1 - w) * solute ** w) / 1000;
};

/**
 * Heat capacity of an aqueous solution [J/(kg·K)].
 *
 *   c = (1 − w) c_w + w c_s,  c_s = a1 exp(a2 t + a3 exp(0.01 t) + a4 w) + a5 w^a6   [kJ/(kg·K)]
 */
export const laliberteHeatCapacity = (
  solution: AqueousSolution,
  {
    massFraction: w,
    temperatureK,
    waterHeatCapacityJPerKgK,
  }: SolutionState & { readonly waterHeatCapacityJPerKgK: number },
): number => {
  const t = temperatureK - zeroCelsiusK;
  if (w < asWater) return waterHeatCapacityJPerKgK;
  const a = (index: number): number => coefficient(solution.heatCapacity.coefficients, index - 1);
  const solute = a(1) * Math.exp(a(2) * t + a(3) * Math.exp(0.01 * t) + a(4) * w) + a(5) * w ** a(6);
  return (1 - w) * waterHeatCapacityJPerKgK + w * 1000 * solute;
};

export type SolutionPropertyName = 'density' | 'viscosity' | 'heatCapacity';

/** The fit's own range, and the range that all fits of the solute cover together. */
export const solutionRanges = (solution: AqueousSolution, property: SolutionPropertyName) => {
  const fits = [solution.density, solution.viscosity, solution.heatCapacity];
  const own = solution[property];
  return {
    own: {
      minTemperatureK: own.minTemperatureC + zeroCelsiusK,
      maxTemperatureK: own.maxTemperatureC + zeroCelsiusK,
      maxMassFraction: own.maxMassFraction,
    },
    outer: {
      minTemperatureK: Math.min(...fits.map((fit) => fit.minTemperatureC)) + zeroCelsiusK,
      maxTemperatureK: Math.max(...fits.map((fit) => fit.maxTemperatureC)) + zeroCelsiusK,
      maxMassFraction: Math.max(...fits.map((fit) => fit.maxMassFraction)),
    },
  };
};

/** Viscosity is extrapolated by this factor of its highest mass fraction at most, and never in temperature. */
const viscosityReach = 1.1;

const reach = (solution: AqueousSolution, property: SolutionPropertyName) => {
  const { own, outer } = solutionRanges(solution, property);
  return property === 'viscosity'
    ? { ...own, maxMassFraction: Math.min(1, viscosityReach * own.maxMassFraction) }
    : outer;
};

/**
 * Whether a state lies in the data to which a property was fitted (`fitted`), or only near them (`extrapolated`: say so):
 * density and heat capacity within the data of the solute's other properties, viscosity up to 10 % more in mass fraction.
 * Further out there is no answer: the exponentials of the form turn wild.
 * @error CALC_OUT_OF_RANGE
 */
export const solutionCoverage = (
  solution: AqueousSolution,
  property: SolutionPropertyName,
  { massFraction, temperatureK }: SolutionState,
): Outcome<'fitted' | 'extrapolated'> => {
  const { own } = solutionRanges(solution, property);
  const limit = reach(solution, property);
  if (massFraction > limit.maxMassFraction) {
    return outOfRange({
      field: 'massFraction',
      given: massFraction,
      unit: '',
      allowed: `0 to ${shown(limit.maxMassFraction)} (${solution.name} in water)`,
    });
  }
  if (temperatureK < limit.minTemperatureK || temperatureK > limit.maxTemperatureK) {
    return outOfRange({
      field: 'temperatureK',
      given: temperatureK,
      unit: 'K',
      allowed: `${shown(limit.minTemperatureK)} to ${shown(limit.maxTemperatureK)} K (${solution.name} in water)`,
    });
  }
  const fitted =
    massFraction <= own.maxMassFraction &&
    temperatureK >= own.minTemperatureK &&
    temperatureK <= own.maxTemperatureK;
  return succeed(fitted ? 'fitted' : 'extrapolated');
};

/** A note for the evidence where a state lies outside the data of a fit. */
export const coverageNote = (
  solution: AqueousSolution,
  property: SolutionPropertyName,
  coverage: 'fitted' | 'extrapolated',
): string => {
  const { own } = solutionRanges(solution, property);
  return coverage === 'fitted'
    ? `${solution.name} in water, ${solution.source}`
    : `${solution.name} in water, ${solution.source}; extrapolated: fitted for ${shown(own.minTemperatureK)} to ${shown(own.maxTemperatureK)} K, w up to ${shown(own.maxMassFraction)}`;
};
