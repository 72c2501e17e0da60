import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { temperatureField } from './fluid-fields.js';
import { fluidHeatOfVaporisation } from './heat-of-vaporisation.js';
import { findLiquid, type Liquid, liquidFields } from './liquid.js';
import { asTabulated, type LiquidPropertyName, type LiquidValue, liquidValue } from './liquid-estimate.js';
import { liquidVapourPressure } from './liquid-vapour-pressure.js';

const outputs = z.strictObject({
  name: z.string().meta({ description: 'The liquid that was found' }),
  molarMassKgPerMol: quantity({
    unit: 'kg/mol',
    symbol: 'M',
    description: 'Molar mass, of the solute in a solution',
  }),
  densityKgPerM3: quantity({ unit: 'kg/m3', symbol: 'ρ', description: 'Density' }).optional(),
  heatCapacityJPerKgK: quantity({ unit: 'J/(kg.K)', symbol: 'c_p', description: 'Heat capacity' }).optional(),
  viscosityPaS: quantity({ unit: 'Pa.s', symbol: 'μ', description: 'Dynamic viscosity' }).optional(),
  conductivityWPerMK: quantity({
    unit: 'W/(m.K)',
    symbol: 'λ',
    description: 'Thermal conductivity',
  }).optional(),
  vapourPressurePaAbs: quantity({ unit: 'Pa', symbol: 'p_v', description: 'Vapour pressure' }).optional(),
  vapourPressureIsUpperBound: z.boolean().meta({ description: 'The true vapour pressure is at most this' }),
  heatOfVaporisationJPerKg: quantity({
    unit: 'J/kg',
    symbol: 'Δh',
    description: 'Heat of vaporisation',
  }).optional(),
  thermalExpansionPerK: quantity({
    unit: '1/K',
    symbol: 'β',
    description: 'Cubic expansion along the saturation line',
  }).optional(),
  criticalTemperatureK: quantity({
    unit: 'K',
    symbol: 'T_c',
    description: 'Critical temperature',
  }).optional(),
  criticalPressurePaAbs: quantity({ unit: 'Pa', symbol: 'p_c', description: 'Critical pressure' }).optional(),
  normalBoilingPointK: quantity({
    unit: 'K',
    symbol: 'T_b',
    description: 'Boiling point at 1 atm',
  }).optional(),
  missing: z.array(z.string()).meta({ description: 'Fields that have no value here' }),
  estimated: z.array(z.string()).meta({ description: 'Fields whose value is an estimate, with its rule' }),
  fromMemory: z.array(z.string()).meta({ description: 'Fields that rest on an unverified value' }),
});

type Properties = z.output<typeof outputs>;

/** Central difference of the density over 2 K, one-sided at the end of the data. */
const thermalExpansion = (liquid: Liquid, temperatureK: number): Outcome<LiquidValue> => {
  const here = liquidValue(liquid, 'density', { temperatureK });
  if (!here.ok) return here;
  const below = liquidValue(liquid, 'density', { temperatureK: temperatureK - 1 });
  const above = liquidValue(liquid, 'density', { temperatureK: temperatureK + 1 });
  const [low, lowAt] = below.ok ? [below.value.value, temperatureK - 1] : [here.value.value, temperatureK];
  const [high, highAt] = above.ok ? [above.value.value, temperatureK + 1] : [here.value.value, temperatureK];
  if (highAt === lowAt || low === high) {
    return below.ok && above.ok
      ? { ok: false, error: { code: 'CALC_MISSING_PROPERTY', message: 'one density only is tabulated' } }
      : below.ok
        ? above
        : below;
  }
  return succeed({ ...here.value, value: (low - high) / ((highAt - lowAt) * here.value.value) });
};

/** Collects found values, and the names of those that are missing, estimated or from memory. */
const collect = (
  entries: readonly (readonly [keyof Properties & string, Outcome<LiquidValue>])[],
): {
  readonly values: Partial<Record<string, number>>;
  readonly missing: string[];
  readonly estimated: string[];
  readonly fromMemory: string[];
} => {
  const found = entries.flatMap(([field, outcome]) => (outcome.ok ? [[field, outcome.value] as const] : []));
  return {
    values: Object.fromEntries(found.map(([field, { value }]) => [field, value])),
    missing: entries.flatMap(([field, outcome]) => (outcome.ok ? [] : [field])),
    estimated: found.flatMap(([field, { estimated, note }]) => (estimated ? [`${field}: ${note}`] : [])),
    fromMemory: found.flatMap(([field, { fromMemory }]) => (fromMemory ? [field] : [])),
  };
};

const constants = (liquid: Liquid) => {
  if (liquid.kind === 'solution') return { molarMassKgPerMol: liquid.solution.molarMassKgPerMol };
  const { molarMassKgPerMol, criticalPoint, normalBoilingPointK } = liquid.fluid;
  return {
    molarMassKgPerMol,
    ...(criticalPoint === undefined ? {} : { criticalTemperatureK: criticalPoint.temperatureK }),
    ...(criticalPoint?.pressurePaAbs === undefined
      ? {}
      : { criticalPressurePaAbs: criticalPoint.pressurePaAbs }),
    ...(normalBoilingPointK === undefined ? {} : { normalBoilingPointK }),
  };
};

const plain = (outcome: Outcome<number>): Outcome<LiquidValue> =>
  outcome.ok ? succeed(asTabulated(outcome.value)) : outcome;

const heatOfVaporisationOf = (liquid: Liquid, temperatureK: number): Outcome<LiquidValue> =>
  liquid.kind === 'pure'
    ? plain(fluidHeatOfVaporisation(liquid.fluid, temperatureK))
    : {
        ok: false,
        error: { code: 'CALC_MISSING_PROPERTY', message: 'a solution has no single heat of vaporisation' },
      };

/**
 * Everything that is known of a liquid at a temperature, and what is not.
 *
 * @param substance    or solute with massFraction (in water)
 * @param temperatureK T [K]
 * @returns the properties that are known; `missing`, `estimated` and `fromMemory` name the fields that are not plain table values
 * @range a property outside its data is estimated by a stated rule or missing, never held constant in silence
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_INVALID_INPUT; a missing property is no error
 * @source as the single properties
 */
export const fluidProperties = calculation({
  id: 'fluid.properties',
  title: 'Properties of a liquid at a temperature',
  inputs: z.strictObject({ ...liquidFields, temperatureK: temperatureField('Temperature') }),
  outputs,
  formula: String.raw`\rho, c_p, \mu, \lambda, p_v, \Delta h, \beta\ \text{at}\ T`,
  range: 'each property within its data, or estimated by a stated rule',
  source: [
    published('vdi-heat-atlas part D3'),
    published('perry-8 tables 2-8, 2-32, 2-153, 2-313'),
    published('laliberte-2009'),
    commonPractice('extension of heat capacity and viscosity past their data'),
  ],
  compute: (inputs, log) => {
    const found = findLiquid(inputs);
    if (!found.ok) return found;
    const liquid = found.value;
    const { temperatureK } = inputs;
    const at = (property: LiquidPropertyName): Outcome<LiquidValue> =>
      liquidValue(liquid, property, { temperatureK, log });
    const vapour = liquidVapourPressure(liquid, temperatureK);
    const entries = [
      ['densityKgPerM3', at('density')],
      ['heatCapacityJPerKgK', at('heatCapacity')],
      ['viscosityPaS', at('viscosity')],
      ['conductivityWPerMK', at('conductivity')],
      ['vapourPressurePaAbs', plain(vapour.ok ? succeed(vapour.value.pressurePaAbs) : vapour)],
      ['heatOfVaporisationJPerKg', heatOfVaporisationOf(liquid, temperatureK)],
      ['thermalExpansionPerK', thermalExpansion(liquid, temperatureK)],
    ] as const;
    const { values, ...quality } = collect(entries);
    if (log) {
      for (const [field, outcome] of entries) {
        log({
          symbol: field,
          formula: 'value at T',
          substituted: `${liquid.name}, T = ${shown(temperatureK)} K`,
          value: outcome.ok ? outcome.value.value : 'missing',
          unit: String(outputs.shape[field].unwrap().meta()?.['unit']),
          ...(outcome.ok
            ? outcome.value.note === ''
              ? {}
              : { note: outcome.value.note }
            : { note: outcome.error.message }),
        });
      }
    }
    return succeed({
      name: liquid.name,
      vapourPressureIsUpperBound: vapour.ok && vapour.value.isUpperBound,
      ...constants(liquid),
      ...values,
      ...quality,
    });
  },
});
