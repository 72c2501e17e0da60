import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import { calculation } from '../calculation.js';
import { molarGasConstant } from '../molar-gas-constant.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { nozzleMassFlux } from './isentropic-flow.js';
import {
  areaM2,
  backPressureCorrection,
  backPressurePaAbs,
  combinationFactor,
  compressibilityFactor,
  dischargeCoefficient,
  inletPressurePaAbs,
  isentropicExponent,
  massFlowKgPerS,
  molarMassKgPerMol,
  temperatureK,
} from './relief-fields.js';

/**
 * Flow area that relieves a gas or vapour, critical or subcritical.
 *
 *   ρ_1 = p_1 M / (Z R T)
 *   A = W / (K_d K_b K_c C √(p_1 ρ_1))      for p_2/p_1 ≤ r_c
 *   A = W / (K_d K_b K_c ψ √(2 p_1 ρ_1))    above
 *
 * The standard prints these with rounded constants (17.9, 0.03948); with R put in they differ by less than 0.1 %.
 *
 * @param massFlowKgPerS       W [kg/s]
 * @param temperatureK         T [K]
 * @param compressibilityFactor Z [-]
 * @param molarMassKgPerMol    M [kg/mol]
 * @param isentropicExponent   k [-]
 * @param inletPressurePaAbs   p_1 [Pa]
 * @param backPressurePaAbs    p_2 [Pa], standard atmosphere where not given
 * @param dischargeCoefficient K_d [-]
 * @param backPressureCorrection K_b [-], 1 where not given
 * @param combinationFactor    K_c [-], 1 where not given
 * @returns areaM2 A [m²]
 * @range p_2 < p_1, 1 ≤ k ≤ 2
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020 sizing for gas or vapour, examples 1 and 2 (pp. 75, 80)
 */
export const gasArea = calculation({
  id: 'relief.gasArea',
  title: 'Relief area for gas or vapour',
  inputs: z.strictObject({
    massFlowKgPerS,
    temperatureK,
    compressibilityFactor,
    molarMassKgPerMol,
    isentropicExponent,
    inletPressurePaAbs,
    backPressurePaAbs: backPressurePaAbs.optional(),
    dischargeCoefficient,
    backPressureCorrection: backPressureCorrection.optional(),
    combinationFactor: combinationFactor.optional(),
  }),
  outputs: z.strictObject({ areaM2 }),
  formula: String.raw`A = \frac{W}{K_d K_b K_c\, C \sqrt{p_1 \rho_1}} \;(p_2/p_1 \le r_c),\quad A = \frac{W}{K_d K_b K_c\, \psi \sqrt{2 p_1 \rho_1}} \;\text{otherwise},\quad \rho_1 = \frac{p_1 M}{Z R T}`,
  range: 'p_2 < p_1, 1 ≤ k ≤ 2, single-phase gas or vapour',
  source: [published('api-520-1:2020 sizing for gas or vapour, examples 1 and 2')],
  compute: (inputs, log) => {
    const { massFlowKgPerS: flow, inletPressurePaAbs: p1, isentropicExponent: k } = inputs;
    const p2 = inputs.backPressurePaAbs ?? normalAtmospherePa;
    if (p2 >= p1) {
      return outOfRange({
        field: 'backPressurePaAbs',
        given: p2,
        unit: 'Pa',
        allowed: `below ${shown(p1)} Pa`,
      });
    }
    const density =
      (p1 * inputs.molarMassKgPerMol) /
      (inputs.compressibilityFactor * molarGasConstant * inputs.temperatureK);
    const { massFlux, choked } = nozzleMassFlux({
      pressurePaAbs: p1,
      backPressurePaAbs: p2,
      densityKgPerM3: density,
      isentropicExponent: k,
    });
    const factor =
      inputs.dischargeCoefficient * (inputs.backPressureCorrection ?? 1) * (inputs.combinationFactor ?? 1);
    const area = flow / (factor * massFlux);
    if (log) {
      log({
        symbol: 'ρ_1',
        formula: 'p_1 M / (Z R T)',
        substituted: `${shown(p1)} × ${shown(inputs.molarMassKgPerMol)} / (${shown(inputs.compressibilityFactor)} × 8.31446 × ${shown(inputs.temperatureK)})`,
        value: density,
        unit: 'kg/m3',
      });
      log({
        symbol: 'G',
        formula: choked ? 'C √(p_1 ρ_1)' : 'ψ √(2 p_1 ρ_1)',
        substituted: choked
          ? `C(${shown(k)}) × √(${shown(p1)} × ${shown(density)})`
          : `ψ(${shown(k)}, ${shown(p2 / p1)}) × √(2 × ${shown(p1)} × ${shown(density)})`,
        value: massFlux,
        unit: 'kg/(m2.s)',
        note: choked ? 'critical flow' : 'subcritical flow',
      });
      log({
        symbol: 'A',
        formula: 'W / (K_d K_b K_c G)',
        substituted: `${shown(flow)} / (${shown(factor)} × ${shown(massFlux)})`,
        value: area,
        unit: 'm2',
      });
    }
    return succeed({ areaM2: area });
  },
});
