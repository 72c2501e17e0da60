import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { molarGasConstant } from '../molar-gas-constant.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import {
  compressibilityFactor,
  isentropicExponent,
  molarMassKgPerMol,
  temperatureK,
} from './relief-fields.js';

/** Numerical constant N6 for kg/h, bar and kg/m³ with a flow coefficient K_v. */
const n6 = 31.6;

export interface ValveFlow {
  readonly upstreamPressurePaAbs: number;
  readonly downstreamPressurePaAbs: number;
  readonly densityKgPerM3: number;
  readonly isentropicExponent: number;
  readonly flowCoefficientKv: number;
  readonly pressureDropRatioFactor: number;
}

/** Mass flow through a control valve without fittings [kg/s], with the numbers that led to it. */
export const valveFlowOf = ({
  upstreamPressurePaAbs: p1,
  downstreamPressurePaAbs: p2,
  densityKgPerM3,
  isentropicExponent: k,
  flowCoefficientKv,
  pressureDropRatioFactor,
}: ValveFlow): {
  readonly massFlow: number;
  readonly x: number;
  readonly chokedX: number;
  readonly y: number;
} => {
  const chokedX = (k / 1.4) * pressureDropRatioFactor;
  const x = Math.min(1 - p2 / p1, chokedX);
  const y = 1 - x / (3 * chokedX);
  const massFlow = (n6 * flowCoefficientKv * y * Math.sqrt(x * (p1 / 1e5) * densityKgPerM3)) / 3600;
  return { massFlow, x, chokedX, y };
};

/**
 * Mass flow of gas through a regulator that has failed wide open.
 *
 *   W = N_6 K_v Y √(x p_1 ρ_1),  x = min((p_1 − p_2)/p_1, F_γ x_T),  Y = 1 − x/(3 F_γ x_T),  F_γ = k/1.4
 *
 * @param upstreamPressurePaAbs    p_1: highest supply pressure [Pa]
 * @param downstreamPressurePaAbs  p_2: relieving pressure of the vessel [Pa]
 * @param temperatureK             T_1 [K]
 * @param molarMassKgPerMol        M [kg/mol]
 * @param compressibilityFactor    Z [-]
 * @param isentropicExponent       k [-]
 * @param flowCoefficientKv        K_v wide open [m³/h at 1 bar]
 * @param pressureDropRatioFactor  x_T [-]
 * @returns massFlowKgPerS W [kg/s]
 * @range p_2 ≤ p_1, 0 < x_T ≤ 1, no attached fittings
 * @error CALC_OUT_OF_RANGE outside the range
 * @source iec-60534-2-1:2011 gas sizing without fittings
 */
export const regulatorFailedOpenFlow = calculation({
  id: 'relief.regulatorFailedOpenFlow',
  title: 'Gas flow through a regulator failed open',
  inputs: z.strictObject({
    upstreamPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p_1', description: 'Highest supply pressure, absolute' },
      z.number().positive(),
    ),
    downstreamPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p_2', description: 'Pressure behind the regulator (relieving), absolute' },
      z.number().min(0),
    ),
    temperatureK,
    molarMassKgPerMol,
    compressibilityFactor,
    isentropicExponent,
    flowCoefficientKv: quantity(
      { unit: 'm3/h', symbol: 'K_v', description: 'Flow coefficient wide open (water at 1 bar)' },
      z.number().min(0),
    ),
    pressureDropRatioFactor: quantity(
      { unit: '1', symbol: 'x_T', description: 'Pressure drop ratio factor of the valve' },
      z.number().positive().max(1),
    ),
  }),
  outputs: z.strictObject({
    massFlowKgPerS: quantity({ unit: 'kg/s', symbol: 'W', description: 'Mass flow into the vessel' }),
  }),
  formula: String.raw`W = N_6 K_v Y \sqrt{x\,p_1 \rho_1},\quad x = \min\!\left(\frac{p_1 - p_2}{p_1}, F_\gamma x_T\right),\quad Y = 1 - \frac{x}{3 F_\gamma x_T},\quad F_\gamma = \frac{k}{1.4}`,
  range: 'p_2 ≤ p_1, 0 < x_T ≤ 1, turbulent gas flow without attached fittings',
  source: [published('iec-60534-2-1:2011 gas sizing without fittings')],
  compute: (inputs, log) => {
    const { upstreamPressurePaAbs: p1, downstreamPressurePaAbs: p2 } = inputs;
    if (p2 > p1) {
      return outOfRange({
        field: 'downstreamPressurePaAbs',
        given: p2,
        unit: 'Pa',
        allowed: `up to the supply pressure, ${shown(p1)} Pa`,
      });
    }
    const densityKgPerM3 =
      (p1 * inputs.molarMassKgPerMol) /
      (inputs.compressibilityFactor * molarGasConstant * inputs.temperatureK);
    const { massFlow, x, chokedX, y } = valveFlowOf({ ...inputs, densityKgPerM3 });
    if (log) {
      log({
        symbol: 'ρ_1',
        formula: 'p_1 M / (Z R T)',
        substituted: `${shown(p1)} × ${shown(inputs.molarMassKgPerMol)} / (${shown(inputs.compressibilityFactor)} × 8.31446 × ${shown(inputs.temperatureK)})`,
        value: densityKgPerM3,
        unit: 'kg/m3',
      });
      log({
        symbol: 'x',
        formula: 'min((p_1 − p_2)/p_1, F_γ x_T)',
        substituted: `min(${shown(1 - p2 / p1)}, ${shown(chokedX)})`,
        value: x,
        unit: '1',
        note: x === chokedX ? 'choked' : 'not choked',
      });
      log({
        symbol: 'Y',
        formula: '1 − x/(3 F_γ x_T)',
        substituted: `1 − ${shown(x)}/(3 × ${shown(chokedX)})`,
        value: y,
        unit: '1',
      });
      log({
        symbol: 'W',
        formula: 'N_6 K_v Y √(x p_1 ρ_1) / 3600, p_1 in bar',
        substituted: `31.6 × ${shown(inputs.flowCoefficientKv)} × ${shown(y)} × √(${shown(x)} × ${shown(p1 / 1e5)} × ${shown(densityKgPerM3)}) / 3600`,
        value: massFlow,
        unit: 'kg/s',
      });
    }
    return succeed({ massFlowKgPerS: massFlow });
  },
});
