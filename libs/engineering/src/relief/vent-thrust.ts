import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import { calculation, quantity } from '../calculation.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';
import { shown } from '../shown.js';
import { ventExit } from './vent-exit.js';
import { ventFields } from './vent-fields.js';

/**
 * Reaction force of a gas stream that leaves a vent line in the open.
 *
 *   F = W u_e + (p_e − p_a) A;  F_d = s F
 *
 * In critical flow u_e = √(2 k Z R T/((k + 1) M)), as in the printed 129 W √(k T/((k + 1) M)) + 0.1 A p.
 *
 * @param massFlowKgPerS       W [kg/s]
 * @param temperatureK         stagnation temperature [K]
 * @param molarMassKgPerMol    M [kg/mol]; isentropicExponent k; compressibilityFactor Z, 1 where not given
 * @param lineDiameterM        d at the open end [m]
 * @param ambientPressurePaAbs p_a [Pa], standard atmosphere where not given
 * @param dynamicLoadFactor    s [-], 2 where not given (sudden load)
 * @returns forceN F, designForceN F_d [N]; exitVelocityMPerS u_e; exitPressurePaAbs p_e
 * @range W ≥ 0, steady flow, straight end
 * @error CALC_OUT_OF_RANGE outside the range
 * @source momentum balance; api-520-2:2015 (from memory, unverified); dynamic load factor 2 is common practice
 */
export const ventThrust = calculation({
  id: 'relief.ventThrust',
  title: 'Thrust of the vent line',
  inputs: z.strictObject({
    ...ventFields,
    dynamicLoadFactor: quantity(
      { unit: '1', symbol: 's', description: 'Dynamic load factor; 2 where nothing is given' },
      z.number().min(1).max(2),
    ).optional(),
  }),
  outputs: z.strictObject({
    forceN: quantity({ unit: 'N', symbol: 'F', description: 'Reaction force in steady flow' }),
    designForceN: quantity({
      unit: 'N',
      symbol: 'F_d',
      description: 'Force for the support, with load factor',
    }),
    exitVelocityMPerS: quantity({ unit: 'm/s', symbol: 'u_e', description: 'Velocity at the open end' }),
    exitPressurePaAbs: quantity({ unit: 'Pa', symbol: 'p_e', description: 'Pressure at the open end' }),
  }),
  formula: String.raw`F = W u_e + (p_e - p_a) A,\quad F_d = s F`,
  range: 'W ≥ 0; steady flow of a perfect gas out of a straight open end',
  source: [
    published('momentum balance'),
    fromMemory('api-520-2:2015 reaction force in the open'),
    commonPractice('vent-practice dynamic load factor 2'),
  ],
  compute: (inputs, log) => {
    const ambientPressurePaAbs = inputs.ambientPressurePaAbs ?? normalAtmospherePa;
    const exit = ventExit({
      ...inputs,
      compressibilityFactor: inputs.compressibilityFactor ?? 1,
      ambientPressurePaAbs,
    });
    const forceN =
      inputs.massFlowKgPerS * exit.velocityMPerS + (exit.pressurePaAbs - ambientPressurePaAbs) * exit.areaM2;
    const factor = inputs.dynamicLoadFactor ?? 2;
    if (log) {
      log({
        symbol: 'u_e',
        formula: 'M_2 √(k Z R T/(M (1 + h M_2²)))',
        substituted: `M_2 = ${shown(exit.mach)}, T = ${shown(inputs.temperatureK)}`,
        value: exit.velocityMPerS,
        unit: 'm/s',
        note: exit.mach < 1 ? 'not choked' : 'choked at the open end',
      });
      log({
        symbol: 'F',
        formula: 'W u_e + (p_e − p_a) A',
        substituted: `${shown(inputs.massFlowKgPerS)} × ${shown(exit.velocityMPerS)} + (${shown(exit.pressurePaAbs)} − ${shown(ambientPressurePaAbs)}) × ${shown(exit.areaM2)}`,
        value: forceN,
        unit: 'N',
      });
      log({
        symbol: 'F_d',
        formula: 's F',
        substituted: `${shown(factor)} × ${shown(forceN)}`,
        value: factor * forceN,
        unit: 'N',
      });
    }
    return succeed({
      forceN,
      designForceN: factor * forceN,
      exitVelocityMPerS: exit.velocityMPerS,
      exitPressurePaAbs: exit.pressurePaAbs,
    });
  },
});
