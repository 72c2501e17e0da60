import { fail, type Outcome, succeed } from '@flangewise/model';
import { type Fluid } from '../fluid/fluid-data.js';
import { fluidProperty } from '../fluid/fluid-property.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';

/** Vapours that associate: a cubic equation misses their density by far. */
const associating: ReadonlySet<string> = new Set(['7664-39-3', '64-19-7', '64-18-6']);

/**
 * Half width of the band within which Z of a gas by Peng–Robinson is expected, relative, by p/p_c. Held in the tests against
 * the reference equations of 17 gases, polar ones among them.
 */
export const pengRobinsonUncertainty = (reducedPressure: number): number => {
  if (reducedPressure <= 0.5) return 0.04;
  return reducedPressure <= 1 ? 0.08 : 0.25;
};

const maxReducedTemperature = 5;
const maxReducedPressure = 10;

/** Largest real root of Z³ + b Z² + c Z + d = 0. */
const largestRoot = (b: number, c: number, d: number): number => {
  const p = c - (b * b) / 3;
  const q = (2 * b ** 3) / 27 - (b * c) / 3 + d;
  const discriminant = (q / 2) ** 2 + (p / 3) ** 3;
  if (discriminant >= 0) {
    const root = Math.sqrt(discriminant);
    return Math.cbrt(-q / 2 + root) + Math.cbrt(-q / 2 - root) - b / 3;
  }
  const angle = Math.acos(Math.min(1, Math.max(-1, -q / 2 / Math.sqrt((-p / 3) ** 3)))) / 3;
  return 2 * Math.sqrt(-p / 3) * Math.cos(angle) - b / 3;
};

/**
 * Acentric factor ω = −log10(p_v(0.7 T_c)/p_c) − 1 from the tabulated vapour pressure.
 * @error CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE from the vapour pressure
 */
export const acentricFactor = (
  fluid: Fluid,
  { temperatureK, pressurePaAbs }: { readonly temperatureK: number; readonly pressurePaAbs: number },
): Outcome<number> => {
  const reduced = fluidProperty(fluid, 'vapourPressure', { temperatureK: 0.7 * temperatureK });
  return reduced.ok ? succeed(-Math.log10(reduced.value / pressurePaAbs) - 1) : reduced;
};

/**
 * Compressibility factor of a gas by the equation of Peng and Robinson (1976), the largest root.
 *
 *   Z³ − (1 − B) Z² + (A − 3B² − 2B) Z − (AB − B² − B³) = 0
 *
 * @param pressurePaAbs p [Pa]
 * @param temperatureK  T [K]
 * @returns Z [-], expected within ± 4 % up to p_c/2, ± 8 % up to p_c, ± 25 % above
 * @range T up to 5 T_c, p up to 10 p_c; not for vapours that associate
 * @error CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source peng-robinson-1976
 */
export const pengRobinsonFactor = (
  fluid: Fluid,
  { pressurePaAbs, temperatureK }: { readonly pressurePaAbs: number; readonly temperatureK: number },
): Outcome<number> => {
  const critical = fluid.criticalPoint;
  if (critical?.pressurePaAbs === undefined || associating.has(fluid.cas)) {
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `gas: ${fluid.name} given; ${associating.has(fluid.cas) ? 'its vapour associates and needs data of its own' : 'its critical point is not tabulated'}. Give a measured density`,
      field: 'gas',
      given: fluid.name,
      allowed: 'a gas with an equation of state here, or one with a tabulated critical point',
    });
  }
  const { temperatureK: Tc, pressurePaAbs: pc } = critical;
  if (temperatureK > maxReducedTemperature * Tc) {
    return outOfRange({
      field: 'temperatureK',
      given: temperatureK,
      unit: 'K',
      allowed: `up to ${shown(maxReducedTemperature * Tc)} K (${fluid.name}, Peng–Robinson)`,
    });
  }
  if (pressurePaAbs > maxReducedPressure * pc) {
    return outOfRange({
      field: 'pressurePaAbs',
      given: pressurePaAbs,
      unit: 'Pa',
      allowed: `up to ${shown(maxReducedPressure * pc)} Pa (${fluid.name}, Peng–Robinson)`,
    });
  }
  const omega = acentricFactor(fluid, { temperatureK: Tc, pressurePaAbs: pc });
  if (!omega.ok) return omega;
  const kappa = 0.37464 + 1.54226 * omega.value - 0.26992 * omega.value ** 2;
  const reducedTemperature = temperatureK / Tc;
  const reducedPressure = pressurePaAbs / pc;
  const alpha = (1 + kappa * (1 - Math.sqrt(reducedTemperature))) ** 2;
  const A = (0.45724 * alpha * reducedPressure) / reducedTemperature ** 2;
  const B = (0.0778 * reducedPressure) / reducedTemperature;
  return succeed(largestRoot(B - 1, A - 3 * B * B - 2 * B, B ** 3 + B * B - A * B));
};
