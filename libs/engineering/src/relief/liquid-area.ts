import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { areaM2, combinationFactor, dischargeCoefficient } from './relief-fields.js';

/** Density of water to which relative density refers, at 15.6 °C [kg/m³]; gives the printed constant 11.78. */
const referenceDensity = 999;

/**
 * Flow area that relieves a liquid through a device of certified capacity.
 *
 *   A = Q / (K_d K_w K_c K_v) √( G ρ_w / (2 (p_1 − p_2)) )
 *
 * @param flowM3PerS             Q at flowing conditions [m³/s]
 * @param relativeDensity        G, to water at 15.6 °C [-]
 * @param inletPressurePaGauge   p_1 [Pa]
 * @param backPressurePaGauge    p_2 [Pa], 0 where not given
 * @param dischargeCoefficient   K_d [-]
 * @param backPressureCorrection K_w of a balanced valve [-], 1 where not given
 * @param combinationFactor      K_c [-], 1 where not given
 * @param viscosityCorrection    K_v [-], 1 where not given (relief.viscosityCorrection)
 * @returns areaM2 A [m²]
 * @range p_2 < p_1, no flashing
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020 sizing for liquid, certified capacity, example 5
 */
export const liquidArea = calculation({
  id: 'relief.liquidArea',
  title: 'Relief area for liquid, certified capacity',
  inputs: z.strictObject({
    flowM3PerS: quantity(
      { unit: 'm3/s', symbol: 'Q', description: 'Volume flow at flowing conditions' },
      z.number().min(0),
    ),
    relativeDensity: quantity(
      { unit: '1', symbol: 'G', description: 'Density by that of water at 15.6 °C' },
      z.number().min(0.05).max(25),
    ),
    inletPressurePaGauge: quantity(
      {
        unit: 'Pa',
        symbol: 'p_1',
        description: 'Inlet pressure over atmosphere (set pressure and overpressure)',
      },
      z.number().positive(),
    ),
    backPressurePaGauge: quantity(
      { unit: 'Pa', symbol: 'p_2', description: 'Back pressure over atmosphere; 0 where nothing is given' },
      z.number().min(-101_325),
    ).optional(),
    dischargeCoefficient,
    backPressureCorrection: quantity(
      {
        unit: '1',
        symbol: 'K_w',
        description: 'Back-pressure correction of a balanced valve; 1 where nothing is given',
      },
      z.number().positive().max(1),
    ).optional(),
    combinationFactor: combinationFactor.optional(),
    viscosityCorrection: quantity(
      { unit: '1', symbol: 'K_v', description: 'Viscosity correction; 1 where nothing is given' },
      z.number().positive().max(1),
    ).optional(),
  }),
  outputs: z.strictObject({ areaM2 }),
  formula: String.raw`A = \frac{Q}{K_d K_w K_c K_v} \sqrt{\frac{G\,\rho_w}{2\,(p_1 - p_2)}}`,
  range: 'p_2 < p_1, liquid that does not flash',
  source: [published('api-520-1:2020 sizing for liquid, certified capacity, example 5')],
  compute: (inputs, log) => {
    const { flowM3PerS: flow, relativeDensity, inletPressurePaGauge: p1 } = inputs;
    const p2 = inputs.backPressurePaGauge ?? 0;
    if (p2 >= p1) {
      return outOfRange({
        field: 'backPressurePaGauge',
        given: p2,
        unit: 'Pa',
        allowed: `below ${shown(p1)} Pa`,
      });
    }
    const factor =
      inputs.dischargeCoefficient *
      (inputs.backPressureCorrection ?? 1) *
      (inputs.combinationFactor ?? 1) *
      (inputs.viscosityCorrection ?? 1);
    const area = (flow / factor) * Math.sqrt((relativeDensity * referenceDensity) / (2 * (p1 - p2)));
    log?.({
      symbol: 'A',
      formula: 'Q / (K_d K_w K_c K_v) × √(G ρ_w / (2 (p_1 − p_2)))',
      substituted: `${shown(flow)} / ${shown(factor)} × √(${shown(relativeDensity)} × 999 / (2 × (${shown(p1)} − ${shown(p2)})))`,
      value: area,
      unit: 'm2',
    });
    return succeed({ areaM2: area });
  },
});
