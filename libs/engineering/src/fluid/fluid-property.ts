import { fail, type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { type Correlation, correlationValue, describeCorrelation } from './correlation.js';
import type { Fluid } from './fluid-data.js';

/** A property of a liquid on its saturation line, or its vapour pressure. */
export type FluidPropertyName =
  'vapourPressure' | 'liquidDensity' | 'liquidHeatCapacity' | 'liquidViscosity' | 'liquidConductivity';

const properties: Readonly<
  Record<FluidPropertyName, { readonly symbol: string; readonly unit: string; readonly words: string }>
> = {
  vapourPressure: { symbol: 'p_v', unit: 'Pa', words: 'vapour pressure' },
  liquidDensity: { symbol: 'ρ', unit: 'kg/m3', words: 'liquid density' },
  liquidHeatCapacity: { symbol: 'c_p', unit: 'J/(kg.K)', words: 'liquid heat capacity' },
  liquidViscosity: { symbol: 'μ', unit: 'Pa.s', words: 'liquid viscosity' },
  liquidConductivity: { symbol: 'λ', unit: 'W/(m.K)', words: 'liquid thermal conductivity' },
};

const covers = (correlation: Correlation, temperatureK: number): boolean =>
  temperatureK >= correlation.minTemperatureK && temperatureK <= correlation.maxTemperatureK;

/** To SI per mass: some forms are printed per mole or per kilomole. */
const perMass = (
  fluid: Fluid,
  correlation: Correlation,
): { readonly factor: number; readonly words?: string } => {
  if (correlation.model === 'dippr105') return { factor: fluid.molarMassKgPerMol, words: '× M' };
  if (correlation.model === 'dippr100' || correlation.model === 'dippr114') {
    return { factor: 1 / (1000 * fluid.molarMassKgPerMol), words: '/ (1000 M)' };
  }
  return { factor: 1 };
};

const valueOf = (fluid: Fluid, correlation: Correlation, temperatureK: number): number =>
  correlationValue(correlation, temperatureK) * perMass(fluid, correlation).factor;

/** The temperatures that the rows of a property cover together [K]; absent where there is no row. */
export const propertyRange = (
  fluid: Fluid,
  property: FluidPropertyName,
): { readonly minTemperatureK: number; readonly maxTemperatureK: number } | undefined => {
  const rows = fluid[property];
  if (rows.length === 0) return undefined;
  return {
    minTemperatureK: Math.min(...rows.map((row) => row.minTemperatureK)),
    maxTemperatureK: Math.max(...rows.map((row) => row.maxTemperatureK)),
  };
};

const logProperty = (
  log: StepLog,
  property: FluidPropertyName,
  {
    fluid,
    row,
    temperatureK,
  }: { readonly fluid: Fluid; readonly row: Correlation; readonly temperatureK: number },
): void => {
  const { symbol, unit } = properties[property];
  const { formula, substituted } = describeCorrelation(row, temperatureK);
  const { words } = perMass(fluid, row);
  const value = valueOf(fluid, row, temperatureK);
  const other = fluid[property].find((candidate) => candidate !== row && covers(candidate, temperatureK));
  const second =
    other === undefined
      ? ''
      : `; ${other.source} gives ${shown(valueOf(fluid, other, temperatureK))} ${unit} (${shown(
          Number((100 * (valueOf(fluid, other, temperatureK) / value - 1)).toFixed(2)),
        )} %)`;
  log({
    symbol,
    formula: words === undefined ? formula : `(${formula}) ${words}`,
    substituted: `${substituted}${words === undefined ? '' : `, M = ${String(fluid.molarMassKgPerMol)} kg/mol`}`,
    value,
    unit,
    note: `${fluid.name}, ${row.source}${row.basis === 'published' ? '' : ` (${row.basis})`}${second}`,
  });
};

const notCovered = (fluid: Fluid, property: FluidPropertyName, temperatureK: number): Outcome<never> => {
  const { words } = properties[property];
  const range = propertyRange(fluid, property);
  if (range === undefined) {
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `substance: ${fluid.name} given; its ${words} is not tabulated. Give a measured value`,
      field: 'substance',
      given: fluid.name,
      allowed: `a substance whose ${words} is tabulated`,
    });
  }
  const critical = fluid.criticalPoint?.temperatureK;
  const beyond = critical !== undefined && temperatureK > critical;
  return outOfRange({
    field: 'temperatureK',
    given: temperatureK,
    unit: 'K',
    allowed: `${shown(range.minTemperatureK)} to ${shown(range.maxTemperatureK)} K (${words} of ${fluid.name}${
      beyond ? `; above its critical point at ${shown(critical)} K there is no liquid` : ''
    })`,
  });
};

/**
 * A property of a fluid at a temperature, from the first row whose range covers it.
 *
 * @param temperatureK T [K]
 * @returns the property in SI units
 * @error CALC_MISSING_PROPERTY where no row exists, CALC_OUT_OF_RANGE outside all rows
 */
export const fluidProperty = (
  fluid: Fluid,
  property: FluidPropertyName,
  { temperatureK, log }: { readonly temperatureK: number; readonly log?: StepLog | undefined },
): Outcome<number> => {
  const row = fluid[property].find((candidate) => covers(candidate, temperatureK));
  if (row === undefined) return notCovered(fluid, property, temperatureK);
  if (log) logProperty(log, property, { fluid, row, temperatureK });
  return succeed(valueOf(fluid, row, temperatureK));
};

/** How far the row that answers can be trusted. */
export const propertyBasis = (
  fluid: Fluid,
  property: FluidPropertyName,
  temperatureK: number,
): Correlation['basis'] | undefined =>
  fluid[property].find((candidate) => covers(candidate, temperatureK))?.basis;
