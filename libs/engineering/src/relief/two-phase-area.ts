import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { omegaCriticalRatioOf, omegaFlowFunctionOf } from './omega-method.js';
import {
  areaM2,
  backPressureCorrection,
  backPressurePaAbs,
  combinationFactor,
  dischargeCoefficient,
  inletPressurePaAbs,
  massFlowKgPerS,
} from './relief-fields.js';

const specificVolume = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm3/kg', symbol, description }, z.number().positive());

/**
 * Flow area that relieves a flashing or non-flashing two-phase mixture (omega method).
 *
 *   ω = 9 (v_9/v_0 − 1)
 *   G = η_c √(p_0/(v_0 ω))                                                          for η_a ≤ η_c
 *   G = √(−2 (ω ln η_a + (ω − 1)(1 − η_a))) / (ω (1/η_a − 1) + 1) × √(p_0/v_0)       above
 *   A = W / (K_d K_b K_c G)
 *
 * @param massFlowKgPerS                    W [kg/s]
 * @param inletSpecificVolumeM3PerKg        v_0 of the mixture at the inlet [m³/kg]
 * @param specificVolumeAt90PercentM3PerKg  v_9 at 90 % of the inlet pressure [m³/kg]
 * @param inletPressurePaAbs                p_0 [Pa]
 * @param backPressurePaAbs                 p_a [Pa], standard atmosphere where not given
 * @param dischargeCoefficient              K_d [-]; 0.85 for a valve, 0.62 for a disc alone in the standard
 * @returns areaM2 A [m²]; omega ω [-]
 * @range 0.01 ≤ ω ≤ 100, p_a < p_0
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020 annex C.2.2
 */
export const twoPhaseArea = calculation({
  id: 'relief.twoPhaseArea',
  title: 'Relief area for a two-phase mixture',
  inputs: z.strictObject({
    massFlowKgPerS,
    inletSpecificVolumeM3PerKg: specificVolume('v_0', 'Specific volume of the mixture at the inlet'),
    specificVolumeAt90PercentM3PerKg: specificVolume('v_9', 'Specific volume at 90 % of the inlet pressure'),
    inletPressurePaAbs,
    backPressurePaAbs: backPressurePaAbs.optional(),
    dischargeCoefficient,
    backPressureCorrection: backPressureCorrection.optional(),
    combinationFactor: combinationFactor.optional(),
  }),
  outputs: z.strictObject({
    areaM2,
    omega: quantity({ unit: '1', symbol: 'ω', description: 'Omega parameter of the mixture' }),
  }),
  formula: String.raw`\omega = 9\left(\frac{v_9}{v_0} - 1\right),\quad G = \eta_c \sqrt{\frac{p_0}{v_0\,\omega}},\quad A = \frac{W}{K_d K_b K_c G}`,
  range: '0.01 ≤ ω ≤ 100, p_a < p_0, homogeneous equilibrium',
  source: [published('api-520-1:2020 annex C.2.2'), published('polykin-042c653 flow/prv')],
  compute: (inputs, log) => {
    const {
      massFlowKgPerS: flow,
      inletSpecificVolumeM3PerKg: v0,
      specificVolumeAt90PercentM3PerKg: v9,
    } = inputs;
    const p0 = inputs.inletPressurePaAbs;
    const pa = inputs.backPressurePaAbs ?? normalAtmospherePa;
    if (pa >= p0) {
      return outOfRange({
        field: 'backPressurePaAbs',
        given: pa,
        unit: 'Pa',
        allowed: `below ${shown(p0)} Pa`,
      });
    }
    const omega = 9 * (v9 / v0 - 1);
    if (omega < 0.01 || omega > 100) {
      return outOfRange({
        field: 'specificVolumeAt90PercentM3PerKg',
        given: v9,
        unit: 'm3/kg',
        allowed: `${shown(v0 * (1 + 0.01 / 9))} to ${shown(v0 * (1 + 100 / 9))} m3/kg (0.01 ≤ ω ≤ 100)`,
      });
    }
    const critical = omegaCriticalRatioOf(omega);
    const massFlux = omegaFlowFunctionOf(omega, pa / p0) * Math.sqrt(p0 / v0);
    const factor =
      inputs.dischargeCoefficient * (inputs.backPressureCorrection ?? 1) * (inputs.combinationFactor ?? 1);
    const area = flow / (factor * massFlux);
    if (log) {
      log({
        symbol: 'ω',
        formula: '9 (v_9/v_0 − 1)',
        substituted: `9 × (${shown(v9)}/${shown(v0)} − 1)`,
        value: omega,
        unit: '1',
      });
      log({
        symbol: 'η_c',
        formula: 'explicit fit of annex C',
        substituted: `ω = ${shown(omega)}; back pressure ratio ${shown(pa / p0)}`,
        value: critical,
        unit: '1',
        note: pa / p0 <= critical ? 'critical flow' : 'subcritical flow',
      });
      log({
        symbol: 'G',
        formula:
          pa / p0 <= critical
            ? 'η_c √(p_0/(v_0 ω))'
            : '√(−2 (ω ln η_a + (ω − 1)(1 − η_a))) / (ω (1/η_a − 1) + 1) × √(p_0/v_0)',
        substituted: `p_0 = ${shown(p0)}, v_0 = ${shown(v0)}`,
        value: massFlux,
        unit: 'kg/(m2.s)',
      });
      log({
        symbol: 'A',
        formula: 'W / (K_d K_b K_c G)',
        substituted: `${shown(flow)} / (${shown(factor)} × ${shown(massFlux)})`,
        value: area,
        unit: 'm2',
      });
    }
    return succeed({ areaM2: area, omega });
  },
});
