import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';

export type FluidState = 'gas' | 'liquid';

/** 0.5 bar above the normal atmospheric pressure of 1 013 mbar, as article 4 states it. */
export const gasThresholdPaAbs = 151_300;

/** Gas or liquid for the tables of annex II. Vapour pressure at TS, absolute [Pa]. */
export const fluidStateOf = (vapourPressurePaAbs: number): FluidState =>
  vapourPressurePaAbs > gasThresholdPaAbs ? 'gas' : 'liquid';

/**
 * State of a fluid for classification.
 *
 *   gas where p_v(TS) > 1.013 bar + 0.5 bar, else liquid
 *
 * @param vapourPressurePaAbs p_v at TS, absolute [Pa]
 * @returns state gas or liquid
 * @range p_v ≥ 0
 * @error CALC_OUT_OF_RANGE below zero
 * @source 2014/68/EU art. 4(1)(a)
 */
export const fluidState = calculation({
  id: 'ped.fluidState',
  title: 'Gas or liquid for classification',
  inputs: z.strictObject({
    vapourPressurePaAbs: quantity(
      {
        unit: 'Pa',
        symbol: 'p_v',
        description: 'Vapour pressure at the highest allowable temperature, absolute',
      },
      z.number().min(0),
    ),
  }),
  outputs: z.strictObject({
    state: z.enum(['gas', 'liquid']).meta({ description: 'What the fluid counts as in the tables' }),
  }),
  formula: String.raw`p_v(TS) > 1.013\,\text{bar} + 0.5\,\text{bar} \Rightarrow \text{gas}`,
  range: 'p_v ≥ 0',
  source: [published('2014/68/EU art. 4(1)(a)')],
  compute: ({ vapourPressurePaAbs }, log) => {
    const state = fluidStateOf(vapourPressurePaAbs);
    log?.({
      symbol: 'state',
      formula: 'p_v > 151 300 Pa',
      substituted: `${shown(vapourPressurePaAbs)} Pa against 151 300 Pa`,
      value: state,
      unit: '1',
    });
    return succeed({ state });
  },
});
