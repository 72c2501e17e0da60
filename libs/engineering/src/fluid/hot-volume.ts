import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { findLiquid, liquidFields, type LiquidInputs } from './liquid.js';
import { asTabulated, type LiquidValue, liquidValue } from './liquid-estimate.js';

/** Highest hot fill fraction by default, and for foaming media. */
export const fillLimits = { usual: 0.85, foaming: 0.6 } as const;

interface Densities {
  readonly cold: LiquidValue;
  readonly hot: LiquidValue;
  readonly name: string;
}

interface DensityInputs extends LiquidInputs {
  readonly coldTemperatureK: number;
  readonly hotTemperatureK: number;
  readonly coldDensityKgPerM3?: number | undefined;
  readonly hotDensityKgPerM3?: number | undefined;
}

const densities = (inputs: DensityInputs, log: StepLog | undefined): Outcome<Densities> => {
  const { coldDensityKgPerM3, hotDensityKgPerM3 } = inputs;
  if (coldDensityKgPerM3 !== undefined && hotDensityKgPerM3 !== undefined) {
    return succeed({
      cold: asTabulated(coldDensityKgPerM3),
      hot: asTabulated(hotDensityKgPerM3),
      name: 'densities as given',
    });
  }
  if (coldDensityKgPerM3 !== undefined || hotDensityKgPerM3 !== undefined) {
    return fail({
      code: 'CALC_INVALID_INPUT',
      message: 'coldDensityKgPerM3: one density given; give both, or none and a substance',
      field: coldDensityKgPerM3 === undefined ? 'coldDensityKgPerM3' : 'hotDensityKgPerM3',
    });
  }
  const liquid = findLiquid(inputs);
  if (!liquid.ok) return liquid;
  const cold = liquidValue(liquid.value, 'density', { temperatureK: inputs.coldTemperatureK, log });
  if (!cold.ok) return relabelled(cold.error, { temperatureK: 'coldTemperatureK' });
  const hot = liquidValue(liquid.value, 'density', { temperatureK: inputs.hotTemperatureK, log });
  if (!hot.ok) return relabelled(hot.error, { temperatureK: 'hotTemperatureK' });
  return succeed({ cold: cold.value, hot: hot.value, name: liquid.value.name });
};

const note = ({ cold, hot, name }: Densities): string =>
  [name, cold.note === '' ? '' : `cold: ${cold.note}`, hot.note === '' ? '' : `hot: ${hot.note}`]
    .filter((part) => part !== '')
    .join('; ');

/**
 * Volume of a batch at its highest temperature from its cold volume, and the fill of a vessel.
 *
 *   V_hot = V_cold ρ(T_cold)/ρ(T_hot),  φ = V/V_vessel
 *
 * What evaporates and the expansion of the vessel are neglected (both would lower the fill).
 *
 * @param substance          or solute with massFraction (in water), or both densities
 * @param coldVolumeM3       V_cold [m³]
 * @param coldTemperatureK   T_cold [K]
 * @param hotTemperatureK    T_hot ≥ T_cold [K]
 * @param vesselVolumeM3     total volume of the vessel, optional [m³]
 * @param foaming            foaming medium, default no
 * @param maxFillFraction    a limit of the engineer's own, with a reason on file, optional [-]
 * @returns hotVolumeM3, expansionRatio V_hot/V_cold, fillLimit; with a vessel coldFillFraction, hotFillFraction,
 *   withinFillLimit and liquidFull (hot fill of 1 or more)
 * @range liquid on its saturation line below the critical point
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_INVALID_INPUT
 * @source density ratio; limits 85 % and 60 % by common practice
 */
export const hotVolume = calculation({
  id: 'fluid.hotVolume',
  title: 'Volume and fill of a batch at its highest temperature',
  inputs: z.strictObject({
    ...liquidFields,
    coldVolumeM3: quantity(
      { unit: 'm3', symbol: 'V_cold', description: 'Volume of the batch when charged' },
      z.number().positive(),
    ),
    coldTemperatureK: quantity(
      { unit: 'K', symbol: 'T_cold', description: 'Temperature when charged' },
      z.number().positive(),
    ),
    hotTemperatureK: quantity(
      { unit: 'K', symbol: 'T_hot', description: 'Highest temperature' },
      z.number().positive(),
    ),
    vesselVolumeM3: quantity(
      { unit: 'm3', symbol: 'V', description: 'Total volume of the vessel' },
      z.number().positive(),
    ).optional(),
    foaming: z.boolean().default(false).meta({ description: 'The batch foams' }),
    maxFillFraction: quantity(
      { unit: '1', symbol: 'φ_max', description: 'Highest hot fill fraction instead of the usual one' },
      z.number().positive().lt(1),
    ).optional(),
    coldDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ_cold', description: 'Measured density when charged' },
      z.number().positive(),
    ).optional(),
    hotDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ_hot', description: 'Measured density at the highest temperature' },
      z.number().positive(),
    ).optional(),
  }),
  outputs: z.strictObject({
    hotVolumeM3: quantity({ unit: 'm3', symbol: 'V_hot', description: 'Volume at the highest temperature' }),
    expansionRatio: quantity({ unit: '1', symbol: 'V_hot/V_cold', description: 'Expansion' }),
    fillLimit: quantity({ unit: '1', symbol: 'φ_max', description: 'Highest hot fill fraction' }),
    estimated: z.boolean().meta({ description: 'A density is an estimate' }),
    fromMemory: z.boolean().meta({ description: 'A density rests on an unverified value' }),
    coldFillFraction: quantity({ unit: '1', symbol: 'φ_cold', description: 'Fill when charged' }).optional(),
    hotFillFraction: quantity({ unit: '1', symbol: 'φ_hot', description: 'Fill when hot' }).optional(),
    withinFillLimit: z.boolean().optional().meta({ description: 'Hot fill is within the limit' }),
    liquidFull: z.boolean().optional().meta({ description: 'The vessel would be full of liquid' }),
  }),
  formula: String.raw`V_\mathrm{hot} = V_\mathrm{cold}\,\frac{\rho(T_\mathrm{cold})}{\rho(T_\mathrm{hot})}`,
  range: 'saturated liquid below the critical point; evaporation and vessel expansion neglected',
  source: [published('vdi-heat-atlas part D3'), commonPractice('fill at most 85 % hot, 60 % where it foams')],
  compute: (inputs, log) => {
    const { coldTemperatureK, hotTemperatureK, coldVolumeM3, vesselVolumeM3 } = inputs;
    if (hotTemperatureK < coldTemperatureK) {
      return outOfRange({
        field: 'hotTemperatureK',
        given: hotTemperatureK,
        unit: 'K',
        allowed: `at least coldTemperatureK (${shown(coldTemperatureK)} K)`,
      });
    }
    const found = densities(inputs, log);
    if (!found.ok) return found;
    const { cold, hot } = found.value;
    const expansionRatio = cold.value / hot.value;
    const hotVolumeM3 = coldVolumeM3 * expansionRatio;
    const fillLimit = inputs.maxFillFraction ?? (inputs.foaming ? fillLimits.foaming : fillLimits.usual);
    log?.({
      symbol: 'V_hot',
      formula: 'V_cold ρ(T_cold)/ρ(T_hot)',
      substituted: `${shown(coldVolumeM3)} × ${shown(cold.value)} / ${shown(hot.value)}`,
      value: hotVolumeM3,
      unit: 'm3',
      note: note(found.value),
    });
    const base = {
      hotVolumeM3,
      expansionRatio,
      fillLimit,
      estimated: cold.estimated || hot.estimated,
      fromMemory: cold.fromMemory || hot.fromMemory,
    };
    if (vesselVolumeM3 === undefined) return succeed(base);
    const hotFillFraction = hotVolumeM3 / vesselVolumeM3;
    log?.({
      symbol: 'φ_hot',
      formula: 'V_hot / V',
      substituted: `${shown(hotVolumeM3)} / ${shown(vesselVolumeM3)}`,
      value: hotFillFraction,
      unit: '1',
      note: `at most ${shown(fillLimit)}, never liquid-full`,
    });
    return succeed({
      ...base,
      coldFillFraction: coldVolumeM3 / vesselVolumeM3,
      hotFillFraction,
      withinFillLimit: hotFillFraction <= fillLimit,
      liquidFull: hotFillFraction >= 1,
    });
  },
});
