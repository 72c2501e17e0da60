import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { temperatureField } from './fluid-fields.js';
import { findLiquid, liquidFields, type LiquidInputs } from './liquid.js';
import { type LiquidVapourPressure, liquidVapourPressure } from './liquid-vapour-pressure.js';

const pressureField = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description });

/** The vapour pressure that was given, or that of the liquid. */
export const vapourPressureOf = (
  inputs: LiquidInputs & { readonly vapourPressurePaAbs?: number | undefined },
  temperatureK: number,
  log?: StepLog,
): Outcome<LiquidVapourPressure> => {
  if (inputs.vapourPressurePaAbs !== undefined) {
    return succeed({
      pressurePaAbs: inputs.vapourPressurePaAbs,
      isUpperBound: false,
      note: 'vapour pressure as given',
    });
  }
  const liquid = findLiquid(inputs);
  return liquid.ok ? liquidVapourPressure(liquid.value, temperatureK, log) : liquid;
};

/**
 * Pressure over a liquid under gas: a stated pressure can be the total or that of the gas alone; both answers are given.
 *
 *   stated as total:   p_gas = p − p_v
 *   stated as partial: p_total = p + p_v
 *
 * @param substance           or solute with massFraction (in water), or vapourPressurePaAbs
 * @param temperatureK        T [K]
 * @param statedPressurePaAbs p [Pa]
 * @param statedMeans         `total`, `partial pressure of the gas`, or absent where nobody said
 * @returns vapourPressurePaAbs, vapourPressureIsUpperBound; gasPressureIfTotalPaAbs (absent where the liquid would boil:
 *   boilsIfTotal), totalPressureIfPartialPaAbs, highestTotalPressurePaAbs: what the vessel must bear by what was stated,
 *   the higher reading where nobody said
 * @range dissolved gas does not change p_v; ideal mixture of gas and vapour
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_INVALID_INPUT
 * @source Dalton's law; vapour pressure as fluid.vapourPressure
 */
export const totalPressure = calculation({
  id: 'fluid.totalPressure',
  title: 'Total and partial pressure over a liquid under gas',
  inputs: z.strictObject({
    ...liquidFields,
    vapourPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p_v', description: 'Measured vapour pressure, absolute' },
      z.number().min(0),
    ).optional(),
    temperatureK: temperatureField('Temperature of liquid and gas'),
    statedPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p', description: 'Pressure as stated, absolute' },
      z.number().min(0),
    ),
    statedMeans: z
      .enum(['total', 'partial pressure of the gas'])
      .optional()
      .meta({ description: 'What the stated pressure means' }),
  }),
  outputs: z.strictObject({
    vapourPressurePaAbs: pressureField('p_v', 'Vapour pressure'),
    vapourPressureIsUpperBound: z.boolean().meta({ description: 'The true vapour pressure is at most this' }),
    gasPressureIfTotalPaAbs: pressureField(
      'p_gas',
      'Partial pressure of the gas if the total is stated',
    ).optional(),
    boilsIfTotal: z
      .boolean()
      .meta({ description: 'The stated pressure as total is below the vapour pressure' }),
    totalPressureIfPartialPaAbs: pressureField('p_total', 'Total pressure if that of the gas is stated'),
    highestTotalPressurePaAbs: pressureField('p_max', 'Total pressure that the vessel must bear'),
  }),
  formula: String.raw`p_\mathrm{total} = p_\mathrm{gas} + p_v(T)`,
  range: 'ideal mixture of gas and vapour; dissolved gas does not change the vapour pressure',
  source: [published('dalton'), commonPractice('vapour pressure of a solution bounded by that of water')],
  compute: (inputs, log) => {
    const vapour = vapourPressureOf(inputs, inputs.temperatureK, log);
    if (!vapour.ok) return vapour;
    const { statedPressurePaAbs: p, statedMeans } = inputs;
    const { pressurePaAbs: vapourPressurePaAbs, isUpperBound, note } = vapour.value;
    const boilsIfTotal = p < vapourPressurePaAbs;
    const totalPressureIfPartialPaAbs = p + vapourPressurePaAbs;
    const highestTotalPressurePaAbs =
      statedMeans === 'total' ? Math.max(p, vapourPressurePaAbs) : totalPressureIfPartialPaAbs;
    log?.({
      symbol: 'p_v',
      formula: 'over the liquid',
      substituted: `T = ${shown(inputs.temperatureK)} K`,
      value: vapourPressurePaAbs,
      unit: 'Pa',
      note,
    });
    log?.({
      symbol: 'p_total',
      formula: 'p + p_v',
      substituted: `${shown(p)} + ${shown(vapourPressurePaAbs)}`,
      value: totalPressureIfPartialPaAbs,
      unit: 'Pa',
      note: 'if the stated pressure is that of the gas alone',
    });
    if (!boilsIfTotal) {
      log?.({
        symbol: 'p_gas',
        formula: 'p − p_v',
        substituted: `${shown(p)} − ${shown(vapourPressurePaAbs)}`,
        value: p - vapourPressurePaAbs,
        unit: 'Pa',
        note: 'if the stated pressure is the total',
      });
    }
    return succeed({
      vapourPressurePaAbs,
      vapourPressureIsUpperBound: isUpperBound,
      ...(boilsIfTotal ? {} : { gasPressureIfTotalPaAbs: p - vapourPressurePaAbs }),
      boilsIfTotal,
      totalPressureIfPartialPaAbs,
      highestTotalPressurePaAbs,
    });
  },
});
