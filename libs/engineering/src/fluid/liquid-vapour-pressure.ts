import { type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { findFluid } from './fluid-data.js';
import { fluidProperty, propertyRange } from './fluid-property.js';
import type { Liquid } from './liquid.js';

export interface LiquidVapourPressure {
  readonly pressurePaAbs: number;
  /** True where the true pressure is at most this. */
  readonly isUpperBound: boolean;
  readonly note: string;
}

const waterMolarMassKgPerMol = 0.01801528;

interface State {
  readonly temperatureK: number;
  readonly log?: StepLog | undefined;
}

const purePressure = (substance: string, state: State): Outcome<number> => {
  const fluid = findFluid(substance);
  return fluid.ok ? fluidProperty(fluid.value, 'vapourPressure', state) : fluid;
};

const solutionPressure = (
  { solution, massFraction }: Extract<Liquid, { kind: 'solution' }>,
  state: State,
): Outcome<LiquidVapourPressure> => {
  const bound = solution.vapourPressureBound;
  if (massFraction > bound.maxMassFraction) {
    return outOfRange({
      field: 'massFraction',
      given: massFraction,
      unit: '',
      allowed: `0 to ${shown(bound.maxMassFraction)}, for which the vapour pressure over ${solution.name} in water is bounded here; give a measured vapour pressure`,
    });
  }
  const water = purePressure('water', state);
  if (!water.ok) return water;
  if (bound.kind === 'water') {
    return succeed({
      pressurePaAbs: water.value,
      isUpperBound: massFraction > 0,
      note: `upper bound: vapour pressure of water over ${solution.name} in water (${bound.basis})`,
    });
  }
  const solute = purePressure(solution.cas, state);
  if (!solute.ok) return solute;
  if (bound.kind === 'higher of both') {
    return succeed({
      pressurePaAbs: Math.max(water.value, solute.value),
      isUpperBound: true,
      note: `upper bound: the higher of the vapour pressures of ${solution.name} and water (${bound.basis})`,
    });
  }
  const soluteMoles = massFraction / solution.molarMassKgPerMol;
  const waterMoles = (1 - massFraction) / waterMolarMassKgPerMol;
  const x = soluteMoles / (soluteMoles + waterMoles);
  return succeed({
    pressurePaAbs: x * solute.value + (1 - x) * water.value,
    isUpperBound: true,
    note: `upper bound by Raoult: ${solution.name} in water lies below it (${bound.basis})`,
  });
};

/**
 * Vapour pressure over a liquid: of a pure fluid as tabulated, of a solution in water an upper bound. Below the data
 * of a pure fluid the value at their lower end is an upper bound.
 *
 * @param temperatureK T [K]
 * @error CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 */
export const liquidVapourPressure = (
  liquid: Liquid,
  temperatureK: number,
  log?: StepLog,
): Outcome<LiquidVapourPressure> => {
  if (liquid.kind === 'solution') return solutionPressure(liquid, { temperatureK, log });
  const lowest = propertyRange(liquid.fluid, 'vapourPressure')?.minTemperatureK;
  const bounded = lowest !== undefined && temperatureK < lowest;
  const pressure = fluidProperty(liquid.fluid, 'vapourPressure', {
    temperatureK: bounded ? lowest : temperatureK,
    log,
  });
  if (!pressure.ok) return pressure;
  return succeed({
    pressurePaAbs: pressure.value,
    isUpperBound: bounded,
    note: bounded
      ? `upper bound: vapour pressure of ${liquid.name} at ${shown(lowest)} K, where the data begin`
      : `vapour pressure of ${liquid.name}`,
  });
};
