import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { liquidFields } from './liquid.js';
import { vapourPressureOf } from './total-pressure.js';

/**
 * Pressure in a closed vessel that was charged with liquid and gas cold and is heated: the gas grows warmer in a
 * headspace that the expanding liquid makes smaller, and vapour is added.
 *
 *   p2 = (p1 − p_v1) (T2/T1) (V − V1)/(V − V2) + p_v2
 *
 * @param substance              or solute with massFraction (in water)
 * @param vesselVolumeM3         V [m³]
 * @param coldVolumeM3, hotVolumeM3 V1, V2 of the liquid (see fluid.hotVolume) [m³]
 * @param coldTemperatureK, hotTemperatureK T1, T2 [K]
 * @param chargedPressurePaAbs   p1, total when charged [Pa]
 * @returns hotPressurePaAbs p2, hotVapourPressurePaAbs p_v2, hotGasPressurePaAbs [Pa]
 * @range ideal gas, nothing dissolves or reacts (on the safe side), V2 < V, p1 ≥ p_v1
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_INVALID_INPUT
 * @source ideal gas law and Dalton's law
 */
export const chargedPressure = calculation({
  id: 'fluid.chargedPressure',
  title: 'Pressure of a closed charge after heating',
  inputs: z.strictObject({
    ...liquidFields,
    vesselVolumeM3: quantity(
      { unit: 'm3', symbol: 'V', description: 'Total volume of the vessel' },
      z.number().positive(),
    ),
    coldVolumeM3: quantity(
      { unit: 'm3', symbol: 'V1', description: 'Liquid volume when charged' },
      z.number().min(0),
    ),
    hotVolumeM3: quantity(
      { unit: 'm3', symbol: 'V2', description: 'Liquid volume when hot' },
      z.number().min(0),
    ),
    coldTemperatureK: quantity(
      { unit: 'K', symbol: 'T1', description: 'Temperature when charged' },
      z.number().positive(),
    ),
    hotTemperatureK: quantity(
      { unit: 'K', symbol: 'T2', description: 'Highest temperature' },
      z.number().positive(),
    ),
    chargedPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p1', description: 'Total pressure when charged, absolute' },
      z.number().min(0),
    ),
  }),
  outputs: z.strictObject({
    hotPressurePaAbs: quantity({ unit: 'Pa', symbol: 'p2', description: 'Total pressure when hot' }),
    hotVapourPressurePaAbs: quantity({ unit: 'Pa', symbol: 'p_v2', description: 'Vapour pressure when hot' }),
    hotGasPressurePaAbs: quantity({
      unit: 'Pa',
      symbol: 'p_g2',
      description: 'Pressure of the gas when hot',
    }),
  }),
  formula: String.raw`p_2 = (p_1 - p_{v1})\,\frac{T_2}{T_1}\,\frac{V - V_1}{V - V_2} + p_{v2}`,
  range: 'ideal gas, nothing dissolves or reacts, liquid volume below the vessel volume, p1 ≥ p_v1',
  source: [
    published('ideal gas law'),
    published('dalton'),
    commonPractice('solubility neglected, on the safe side'),
  ],
  compute: (inputs, log) => {
    const { vesselVolumeM3: V, coldVolumeM3: V1, hotVolumeM3: V2, chargedPressurePaAbs: p1 } = inputs;
    for (const [field, volume] of [
      ['coldVolumeM3', V1],
      ['hotVolumeM3', V2],
    ] as const) {
      if (volume >= V) {
        return outOfRange({
          field,
          given: volume,
          unit: 'm3',
          allowed: `less than vesselVolumeM3 (${shown(V)} m3): the vessel must never be liquid-full`,
        });
      }
    }
    const cold = vapourPressureOf(inputs, inputs.coldTemperatureK, log);
    if (!cold.ok) return relabelled(cold.error, { temperatureK: 'coldTemperatureK' });
    const hot = vapourPressureOf(inputs, inputs.hotTemperatureK, log);
    if (!hot.ok) return relabelled(hot.error, { temperatureK: 'hotTemperatureK' });
    // An upper bound of the cold vapour pressure would make the gas too little: without a value none is taken off.
    const coldVapour = cold.value.isUpperBound ? 0 : cold.value.pressurePaAbs;
    if (p1 < coldVapour) {
      return outOfRange({
        field: 'chargedPressurePaAbs',
        given: p1,
        unit: 'Pa',
        allowed: `at least the vapour pressure ${shown(coldVapour)} Pa when charged`,
      });
    }
    const ratio = (inputs.hotTemperatureK / inputs.coldTemperatureK) * ((V - V1) / (V - V2));
    const hotGasPressurePaAbs = (p1 - coldVapour) * ratio;
    const hotVapourPressurePaAbs = hot.value.pressurePaAbs;
    const hotPressurePaAbs = hotGasPressurePaAbs + hotVapourPressurePaAbs;
    log?.({
      symbol: 'p2',
      formula: '(p1 − p_v1) (T2/T1) (V − V1)/(V − V2) + p_v2',
      substituted: `(${shown(p1)} − ${shown(coldVapour)}) × (${shown(inputs.hotTemperatureK)}/${shown(inputs.coldTemperatureK)}) × (${shown(V)} − ${shown(V1)})/(${shown(V)} − ${shown(V2)}) + ${shown(hotVapourPressurePaAbs)}`,
      value: hotPressurePaAbs,
      unit: 'Pa',
      note: hot.value.note,
    });
    return succeed({ hotPressurePaAbs, hotVapourPressurePaAbs, hotGasPressurePaAbs });
  },
});
