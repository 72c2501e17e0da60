import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { type Fluid, findFluid } from './fluid-data.js';
import { massFractionField, substanceField, temperatureField } from './fluid-fields.js';
import { fluidProperty, type FluidPropertyName } from './fluid-property.js';

/** How far the mass fractions may miss 1 together. */
const sumTolerance = 0.001;

interface Part {
  readonly fluid: Fluid;
  readonly massFraction: number;
  readonly moleFraction: number;
}

const partsOf = (
  components: readonly { readonly substance: string; readonly massFraction: number }[],
): Outcome<readonly Part[]> => {
  const sum = components.reduce((total, { massFraction }) => total + massFraction, 0);
  if (Math.abs(sum - 1) > sumTolerance) {
    return fail({
      code: 'CALC_INVALID_INPUT',
      message: `components: mass fractions of together ${shown(sum)} given; they must come to 1`,
      field: 'components',
      given: sum,
      allowed: '1 together',
    });
  }
  const found: { readonly fluid: Fluid; readonly massFraction: number }[] = [];
  for (const { substance, massFraction } of components) {
    const fluid = findFluid(substance);
    if (!fluid.ok) return { ok: false, error: { ...fluid.error, field: 'components' } };
    found.push({ fluid: fluid.value, massFraction: massFraction / sum });
  }
  const moles = found.reduce(
    (total, { fluid, massFraction }) => total + massFraction / fluid.molarMassKgPerMol,
    0,
  );
  return succeed(
    found.map(({ fluid, massFraction }) => ({
      fluid,
      massFraction,
      moleFraction: massFraction / fluid.molarMassKgPerMol / moles,
    })),
  );
};

/** Sums a property over the parts; the error of the first part that lacks it says which. */
const summed = (
  parts: readonly Part[],
  property: FluidPropertyName,
  {
    temperatureK,
    term,
  }: { readonly temperatureK: number; readonly term: (part: Part, value: number) => number },
): Outcome<number> => {
  let total = 0;
  for (const part of parts) {
    const value = fluidProperty(part.fluid, property, { temperatureK });
    if (!value.ok) return value;
    total += term(part, value.value);
  }
  return succeed(total);
};

/**
 * Density, heat capacity and vapour pressure of a mixture of liquids by ideal rules.
 *
 *   1/ρ = Σ w_i/ρ_i,  c = Σ w_i c_i,  p_v = Σ x_i p_vi (Raoult),  at most Σ p_vi (parts that do not mix)
 *
 * @param components   substances with mass fractions that come to 1
 * @param temperatureK T [K]
 * @returns densityKgPerM3, heatCapacityJPerKgK (absent where a part lacks it), vapourPressureIdealPaAbs,
 *   vapourPressureUpperBoundPaAbs
 * @range parts alike; with unlike parts (water and alcohols, azeotropes) Raoult can miss by tens of per cent: a demand
 *   takes the upper bound. No part may be above its critical point
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_INVALID_INPUT
 * @source Raoult's law; ideal mixing
 */
export const mixture = calculation({
  id: 'fluid.mixture',
  title: 'Properties of a mixture of liquids, ideal',
  inputs: z.strictObject({
    components: z
      .array(z.strictObject({ substance: substanceField, massFraction: massFractionField }))
      .min(1)
      .max(20),
    temperatureK: temperatureField('Temperature'),
  }),
  outputs: z.strictObject({
    densityKgPerM3: quantity({ unit: 'kg/m3', symbol: 'ρ', description: 'Density' }),
    heatCapacityJPerKgK: quantity({
      unit: 'J/(kg.K)',
      symbol: 'c_p',
      description: 'Heat capacity',
    }).optional(),
    vapourPressureIdealPaAbs: quantity({
      unit: 'Pa',
      symbol: 'p_v',
      description: 'Vapour pressure by Raoult',
    }),
    vapourPressureUpperBoundPaAbs: quantity({
      unit: 'Pa',
      symbol: 'Σp_v',
      description: 'Sum of the vapour pressures of the parts, reached where they do not mix',
    }),
  }),
  formula: String.raw`\frac{1}{\rho} = \sum\frac{w_i}{\rho_i},\quad c = \sum w_i c_i,\quad p_v = \sum x_i p_{v,i} \le \sum p_{v,i}`,
  range: 'ideal mixture of liquids, each below its critical point',
  source: [published('raoult'), commonPractice('ideal mixing of volume and heat capacity')],
  compute: ({ components, temperatureK }, log) => {
    const parts = partsOf(components);
    if (!parts.ok) return parts;
    const volume = summed(parts.value, 'liquidDensity', {
      temperatureK,
      term: ({ massFraction }, density) => massFraction / density,
    });
    if (!volume.ok) return volume;
    const ideal = summed(parts.value, 'vapourPressure', {
      temperatureK,
      term: ({ moleFraction }, pressure) => moleFraction * pressure,
    });
    if (!ideal.ok) return ideal;
    const bound = summed(parts.value, 'vapourPressure', {
      temperatureK,
      term: ({ massFraction }, pressure) => (massFraction > 0 ? pressure : 0),
    });
    if (!bound.ok) return bound;
    const heat = summed(parts.value, 'liquidHeatCapacity', {
      temperatureK,
      term: ({ massFraction }, capacity) => massFraction * capacity,
    });
    const shares = parts.value
      .map(({ fluid, moleFraction }) => `x = ${shown(moleFraction)} ${fluid.name}`)
      .join(', ');
    log?.({
      symbol: 'ρ',
      formula: '1 / Σ w_i/ρ_i',
      substituted: `1 / ${shown(volume.value)}`,
      value: 1 / volume.value,
      unit: 'kg/m3',
    });
    log?.({
      symbol: 'p_v',
      formula: 'Σ x_i p_vi',
      substituted: shares,
      value: ideal.value,
      unit: 'Pa',
      note: `ideal; parts that do not mix reach ${shown(bound.value)} Pa`,
    });
    return succeed({
      densityKgPerM3: 1 / volume.value,
      ...(heat.ok ? { heatCapacityJPerKgK: heat.value } : {}),
      vapourPressureIdealPaAbs: ideal.value,
      vapourPressureUpperBoundPaAbs: bound.value,
    });
  },
});
