import { type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { findFluid, type Fluid } from './fluid-data.js';
import { fluidProperty, type FluidPropertyName, propertyBasis, propertyRange } from './fluid-property.js';
import type { Liquid } from './liquid.js';
import {
  laliberteDensity,
  laliberteHeatCapacity,
  laliberteViscosity,
  solutionCoverage,
  type SolutionPropertyName,
  solutionRanges,
} from './laliberte.js';

export interface LiquidValue {
  readonly value: number;
  /** It lies outside the data, or rests on common practice. */
  readonly estimated: boolean;
  /** It rests on an unverified value. */
  readonly fromMemory: boolean;
  /** Why it is not a plain table value. Empty where it is. */
  readonly note: string;
}

/** A value that may be taken as it stands: from a published row, or measured. */
export const asTabulated = (value: number): LiquidValue => ({
  value,
  estimated: false,
  fromMemory: false,
  note: '',
});

const asEstimate = (value: number, note: string): LiquidValue => ({
  value,
  estimated: true,
  fromMemory: false,
  note,
});

interface At {
  readonly temperatureK: number;
  readonly log?: StepLog | undefined;
}

export type LiquidPropertyName = 'density' | 'heatCapacity' | 'viscosity' | 'conductivity';

const pureNames: Readonly<Record<LiquidPropertyName, FluidPropertyName>> = {
  density: 'liquidDensity',
  heatCapacity: 'liquidHeatCapacity',
  viscosity: 'liquidViscosity',
  conductivity: 'liquidConductivity',
};

/** Up to here, in T/T_c, heat capacity and viscosity are extended past their data. */
const extensionLimit = 0.95;

/** Up to this mass fraction the conductivity of water stands in for that of a solution. */
const waterConductivityLimit = 0.2;

/** A narrower span of data is not extended [K]. */
const smallestSpanK = 15;

/** Exponent with which liquid heat capacity grows towards the critical point (within 5 % for toluene, n-hexane). */
const heatCapacityExponent = 0.28;

const tabulated = (fluid: Fluid, property: FluidPropertyName, at: At): Outcome<LiquidValue> => {
  const found = fluidProperty(fluid, property, at);
  if (!found.ok) return found;
  const basis = propertyBasis(fluid, property, at.temperatureK);
  return succeed({
    value: found.value,
    estimated: basis === 'common practice',
    fromMemory: basis === 'from memory, unverified',
    note: basis === undefined || basis === 'published' ? '' : basis,
  });
};

/**
 * Heat capacity and viscosity above the range of their data, up to 0.95 T_c:
 * c(T) = c(T_e) ((T_c − T_e)/(T_c − T))^0.28, and ln μ straight over 1/T with the slope at the end of the data.
 */
const extended = (
  fluid: Fluid,
  property: FluidPropertyName,
  { temperatureK, log }: At,
): LiquidValue | undefined => {
  if (property !== 'liquidHeatCapacity' && property !== 'liquidViscosity') return undefined;
  const critical = fluid.criticalPoint?.temperatureK;
  const range = propertyRange(fluid, property);
  if (critical === undefined || range === undefined) return undefined;
  const end = range.maxTemperatureK;
  const wideEnough = end - range.minTemperatureK >= smallestSpanK;
  if (!wideEnough || temperatureK <= end || temperatureK > extensionLimit * critical) return undefined;
  const last = tabulated(fluid, property, { temperatureK: end, log });
  if (!last.ok) return undefined;
  const from = `extended from ${shown(end)} K, where the data end`;
  if (property === 'liquidHeatCapacity') {
    return {
      ...asEstimate(
        last.value.value * ((critical - end) / (critical - temperatureK)) ** heatCapacityExponent,
        `${from}; expected within 10 %`,
      ),
      fromMemory: last.value.fromMemory,
    };
  }
  const before = tabulated(fluid, property, { temperatureK: end - 5 });
  if (!before.ok) return undefined;
  const slope = Math.log(last.value.value / before.value.value) / (1 / end - 1 / (end - 5));
  return {
    ...asEstimate(
      last.value.value * Math.exp(slope * (1 / temperatureK - 1 / end)),
      `${from}; expected within a factor of 1.5`,
    ),
    fromMemory: last.value.fromMemory,
  };
};

const pureValue = (fluid: Fluid, property: LiquidPropertyName, at: At): Outcome<LiquidValue> => {
  const name = pureNames[property];
  const estimate = extended(fluid, name, at);
  return estimate === undefined ? tabulated(fluid, name, at) : succeed(estimate);
};

const waterValue = (property: LiquidPropertyName, temperatureK: number): Outcome<number> => {
  const water = findFluid('water');
  if (!water.ok) return water;
  return fluidProperty(water.value, pureNames[property], { temperatureK });
};

const laliberteValue = (
  liquid: Extract<Liquid, { kind: 'solution' }>,
  property: SolutionPropertyName,
  temperatureK: number,
): Outcome<number> => {
  const state = { massFraction: liquid.massFraction, temperatureK };
  switch (property) {
    case 'density':
      return succeed(laliberteDensity(liquid.solution, state));
    case 'viscosity':
      return succeed(laliberteViscosity(liquid.solution, state));
    case 'heatCapacity': {
      const water = waterValue('heatCapacity', temperatureK);
      return water.ok
        ? succeed(laliberteHeatCapacity(liquid.solution, { ...state, waterHeatCapacityJPerKgK: water.value }))
        : water;
    }
  }
};

/** Past the data of a solution its property follows that of water: X(T) = X(T_e) X_w(T)/X_w(T_e). */
const solutionValue = (
  liquid: Extract<Liquid, { kind: 'solution' }>,
  property: SolutionPropertyName,
  temperatureK: number,
): Outcome<LiquidValue> => {
  const { outer, own } = solutionRanges(liquid.solution, property);
  const end = Math.min(outer.maxTemperatureK, own.maxTemperatureK);
  const within = temperatureK > end ? end : temperatureK;
  const coverage = solutionCoverage(liquid.solution, property, {
    massFraction: liquid.massFraction,
    temperatureK: within,
  });
  if (!coverage.ok) return coverage;
  const base = laliberteValue(liquid, property, within);
  if (!base.ok) return base;
  if (within === temperatureK) {
    return succeed(
      coverage.value === 'fitted'
        ? asTabulated(base.value)
        : asEstimate(base.value, 'outside the data of the fit'),
    );
  }
  const [hot, cold] = [waterValue(property, temperatureK), waterValue(property, within)];
  if (!hot.ok) return hot;
  if (!cold.ok) return cold;
  return succeed(
    asEstimate(
      (base.value * hot.value) / cold.value,
      `from ${shown(within)} K, where the data end, it follows water`,
    ),
  );
};

const solutionUnits: Readonly<Record<SolutionPropertyName, readonly [string, string]>> = {
  density: ['ρ', 'kg/m3'],
  viscosity: ['μ', 'Pa.s'],
  heatCapacity: ['c_p', 'J/(kg.K)'],
};

const logSolution = (
  liquid: Extract<Liquid, { kind: 'solution' }>,
  property: SolutionPropertyName,
  {
    temperatureK,
    log,
    found,
  }: { readonly temperatureK: number; readonly log: StepLog; readonly found: LiquidValue },
): void => {
  const [symbol, unit] = solutionUnits[property];
  log({
    symbol,
    formula: `Laliberté, ${property} of the solution`,
    substituted: `w = ${shown(liquid.massFraction)}, T = ${shown(temperatureK)} K, ${liquid.solution[property].coefficients.map(shown).join(', ')}`,
    value: found.value,
    unit,
    note: [`${liquid.name}, ${liquid.solution.source}`, found.note].filter((part) => part !== '').join('; '),
  });
};

/**
 * A property of a liquid at a temperature, with how it came about. Past the data it is estimated where a stated rule
 * allows, and marked; else the error says why there is none.
 *
 * @param temperatureK T [K]
 * @returns density [kg/m³], heat capacity [J/(kg·K)], viscosity [Pa·s] or conductivity [W/(m·K)]
 * @error CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 */
export const liquidValue = (liquid: Liquid, property: LiquidPropertyName, at: At): Outcome<LiquidValue> => {
  if (liquid.kind === 'pure') return pureValue(liquid.fluid, property, at);
  const { temperatureK, log } = at;
  if (property !== 'conductivity') {
    const found = solutionValue(liquid, property, temperatureK);
    if (found.ok && log) logSolution(liquid, property, { temperatureK, log, found: found.value });
    return found;
  }
  const water = waterValue('conductivity', temperatureK);
  if (!water.ok) return water;
  return liquid.massFraction <= waterConductivityLimit
    ? succeed(asEstimate(water.value, 'that of water; up to 10 % lower in a solution'))
    : outOfRange({
        field: 'massFraction',
        given: liquid.massFraction,
        unit: '',
        allowed: `0 to ${String(waterConductivityLimit)}, where the conductivity of water stands in for that of the solution`,
      });
};
