import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { fluidBoilingTemperature } from '../fluid/boiling-temperature.js';
import { findFluid } from '../fluid/fluid-data.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

const openDrainPressurePa = 101_325;

const waterBoils = (pressurePaAbs: number): Outcome<number> => {
  const water = findFluid('water');
  return water.ok ? fluidBoilingTemperature(water.value, pressurePaAbs) : water;
};

/**
 * Heat that a coil or jacket removes from a mixed batch of constant temperature, with the unfavourable end of U, and whether
 * a water coil can steam.
 *
 *   Q = min((1 − exp(−U_min A/(W c))) W c (T − T_in), P_c)
 *
 * @param lowerCoefficientWPerM2K U_min, lower end of the band [W/(m²·K)]
 * @param areaM2 A, wetted at this fill [m²]
 * @param batchTemperatureK T [K], mediumInletTemperatureK T_in < T [K]
 * @param mediumFlowKgPerS W, mediumHeatCapacityJPerKgK c
 * @param coolingPowerW P_c of a chiller or circulator, optional [W]
 * @param mediumIsWater the medium is water, tap water for instance; mediumPressurePaAbs at its outlet, open drain where absent
 * @returns removableW [W], mediumOutletTemperatureK [K]; for water boilingTemperatureK, steamLockRisk: the wall can be
 *   hotter than water boils
 * @range batch mixed, T_in < T
 * @error CALC_OUT_OF_RANGE
 * @source vdi-heat-atlas part C1; steam lock by common practice
 */
export const removableHeat = calculation({
  id: 'heat.removableHeat',
  title: 'Heat that a coil or jacket removes',
  inputs: z.strictObject({
    lowerCoefficientWPerM2K: heatFields.positive('W/(m2.K)', 'U_min', 'Lower end of the overall coefficient'),
    areaM2: heatFields.areaM2,
    batchTemperatureK: heatFields.positive('K', 'T', 'Temperature of the batch'),
    mediumInletTemperatureK: heatFields.mediumInletTemperatureK,
    mediumFlowKgPerS: heatFields.mediumFlowKgPerS,
    mediumHeatCapacityJPerKgK: heatFields.mediumHeatCapacityJPerKgK,
    coolingPowerW: heatFields
      .positive('W', 'P_c', 'Cooling power of the circulator at this temperature')
      .optional(),
    mediumIsWater: z.boolean().default(false).meta({ description: 'The medium is water' }),
    mediumPressurePaAbs: heatFields
      .positive('Pa', 'p_m', 'Absolute pressure at the outlet of the medium')
      .default(openDrainPressurePa),
  }),
  outputs: z.strictObject({
    removableW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat removed' }),
    mediumOutletTemperatureK: quantity({ unit: 'K', symbol: 'T_out', description: 'Outlet of the medium' }),
    limitedByCoolingPower: z.boolean().meta({ description: 'The cooling power is less than the transfer' }),
    boilingTemperatureK: quantity({
      unit: 'K',
      symbol: 'T_b',
      description: 'Water boils at the outlet',
    }).optional(),
    steamLockRisk: z
      .boolean()
      .optional()
      .meta({ description: 'The wall can be hotter than water boils: pulses of steam, loss of cooling' }),
  }),
  formula: String.raw`\dot Q = \min\!\left((1 - e^{-U A/(W c)})\,W c\,(T - T_\mathrm{in}),\ P_c\right)`,
  range: 'batch mixed and warmer than the inlet of the medium',
  source: [
    published('vdi-heat-atlas part C1'),
    commonPractice('steam lock of water coils above the boiling point'),
  ],
  compute: (inputs, log) => {
    const { batchTemperatureK, mediumInletTemperatureK, coolingPowerW } = inputs;
    if (batchTemperatureK <= mediumInletTemperatureK) {
      return outOfRange({
        field: 'mediumInletTemperatureK',
        given: mediumInletTemperatureK,
        unit: 'K',
        allowed: `less than batchTemperatureK (${shown(batchTemperatureK)} K)`,
      });
    }
    const capacityFlow = inputs.mediumFlowKgPerS * inputs.mediumHeatCapacityJPerKgK;
    const effectiveness = -Math.expm1((-inputs.lowerCoefficientWPerM2K * inputs.areaM2) / capacityFlow);
    const transferred = effectiveness * capacityFlow * (batchTemperatureK - mediumInletTemperatureK);
    const removableW = Math.min(transferred, coolingPowerW ?? Infinity);
    log?.({
      symbol: 'Q',
      formula: '(1 − exp(−U_min A/(W c))) W c (T − T_in)',
      substituted: `${shown(effectiveness)} × ${shown(capacityFlow)} × (${shown(batchTemperatureK)} − ${shown(mediumInletTemperatureK)})`,
      value: transferred,
      unit: 'W',
      note: 'lower end of the overall coefficient',
    });
    const result = {
      removableW,
      mediumOutletTemperatureK: mediumInletTemperatureK + removableW / capacityFlow,
      limitedByCoolingPower: coolingPowerW !== undefined && coolingPowerW < transferred,
    };
    if (!inputs.mediumIsWater) return succeed(result);
    const boiling = waterBoils(inputs.mediumPressurePaAbs);
    if (!boiling.ok) return { ok: false, error: { ...boiling.error, field: 'mediumPressurePaAbs' } };
    const steamLockRisk = batchTemperatureK > boiling.value;
    log?.({
      symbol: 'T_b',
      formula: 'p_v(T_b) = p_m',
      substituted: `p_m = ${shown(inputs.mediumPressurePaAbs)} Pa`,
      value: boiling.value,
      unit: 'K',
      note: steamLockRisk
        ? 'the batch is hotter: water can steam in the coil. Keep the flow up before the batch is hot, vent the outlet, or cool by oil'
        : 'the batch is cooler than water boils',
    });
    return succeed({ ...result, boilingTemperatureK: boiling.value, steamLockRisk });
  },
});
