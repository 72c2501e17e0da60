import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { type Fluid, findFluid } from './fluid-data.js';
import { substanceField } from './fluid-fields.js';
import { fluidProperty, propertyRange } from './fluid-property.js';

const maxSteps = 60;
const precisionK = 1e-8;

/** Root of a rising function that is nearly straight over 1/T, by false position with halving (Illinois). */
const bracketedRoot = (
  rising: (temperatureK: number) => number,
  {
    minTemperatureK,
    maxTemperatureK,
  }: { readonly minTemperatureK: number; readonly maxTemperatureK: number },
): number => {
  let [low, high] = [minTemperatureK, maxTemperatureK];
  let [atLow, atHigh] = [rising(low), rising(high)];
  let last = 0;
  for (let step = 0; step < maxSteps && high - low > precisionK; step += 1) {
    const inverse = (atHigh / low - atLow / high) / (atHigh - atLow);
    const next = Math.min(high, Math.max(low, 1 / inverse));
    const value = rising(next);
    if (Math.abs(value) < 1e-12) return next;
    if (value < 0) {
      [low, atLow] = [next, value];
      if (last < 0) atHigh /= 2;
    } else {
      [high, atHigh] = [next, value];
      if (last > 0) atLow /= 2;
    }
    last = Math.sign(value);
  }
  return (low + high) / 2;
};

/**
 * Boiling temperature of a fluid at a pressure: p_v(T) = p over the range of the vapour pressure [K].
 * @error CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 */
export const fluidBoilingTemperature = (fluid: Fluid, pressurePaAbs: number): Outcome<number> => {
  const range = propertyRange(fluid, 'vapourPressure');
  const at = (temperatureK: number): Outcome<number> =>
    fluidProperty(fluid, 'vapourPressure', { temperatureK });
  if (range === undefined) return at(0);
  const lowest = at(range.minTemperatureK);
  const highest = at(range.maxTemperatureK);
  if (!lowest.ok) return lowest;
  if (!highest.ok) return highest;
  if (pressurePaAbs < lowest.value || pressurePaAbs > highest.value) {
    return outOfRange({
      field: 'pressurePaAbs',
      given: pressurePaAbs,
      unit: 'Pa',
      allowed: `${shown(lowest.value)} to ${shown(highest.value)} Pa (vapour pressure of ${fluid.name}); above its critical pressure nothing boils`,
    });
  }
  return succeed(
    bracketedRoot((temperatureK) => {
      const pressure = at(temperatureK);
      return pressure.ok ? Math.log(pressure.value / pressurePaAbs) : 0;
    }, range),
  );
};

/**
 * Boiling temperature of a pure liquid at a pressure.
 *
 *   p_v(T_b) = p
 *
 * @param substance     CAS number or common name
 * @param pressurePaAbs p [Pa]
 * @returns temperatureK T_b [K]
 * @range pressures that the vapour pressure covers, up to the critical pressure
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source as fluid.vapourPressure
 */
export const boilingTemperature = calculation({
  id: 'fluid.boilingTemperature',
  title: 'Boiling temperature of a pure liquid',
  inputs: z.strictObject({
    substance: substanceField,
    pressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p', description: 'Absolute pressure' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    temperatureK: quantity({ unit: 'K', symbol: 'T_b', description: 'Boiling temperature' }),
  }),
  formula: String.raw`p_v(T_b) = p`,
  range: 'pressures that the vapour pressure covers',
  source: [published('poling-5 app. A'), published('perry-8 table 2-8')],
  compute: ({ substance, pressurePaAbs }, log) => {
    const fluid = findFluid(substance);
    if (!fluid.ok) return fluid;
    const found = fluidBoilingTemperature(fluid.value, pressurePaAbs);
    if (!found.ok) return found;
    if (log) fluidProperty(fluid.value, 'vapourPressure', { temperatureK: found.value, log });
    log?.({
      symbol: 'T_b',
      formula: 'p_v(T_b) = p',
      substituted: `p = ${shown(pressurePaAbs)} Pa`,
      value: found.value,
      unit: 'K',
    });
    return succeed({ temperatureK: found.value });
  },
});
