import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice } from '../source-reference.js';

/**
 * Pressure rise per kelvin in a vessel or pipe that is full of liquid and shut in.
 *
 *   dp/dT = (β_l − β_v) / (κ + D/(e E))
 *
 * @param liquidExpansionPerK   β_l, cubic expansion of the liquid [1/K]
 * @param vesselExpansionPerK   β_v, cubic expansion of the wall [1/K]
 * @param compressibilityPerPa  κ, isothermal compressibility of the liquid [1/Pa]
 * @param diameterOverThickness D/e [-]
 * @param elasticModulusPa      E of the wall [Pa]
 * @returns pressureRisePaPerK dp/dT [Pa/K]
 * @range thin elastic wall, β_l ≥ β_v
 * @error CALC_OUT_OF_RANGE outside the range
 * @source common practice (blocked-in liquid; ISO 23251 §4.4.12 gives the case, not this formula)
 */
export const liquidFullPressureRise = calculation({
  id: 'fluid.liquidFullPressureRise',
  title: 'Pressure rise of a shut-in liquid',
  inputs: z.strictObject({
    liquidExpansionPerK: quantity(
      { unit: '1/K', symbol: 'β_l', description: 'Cubic expansion of the liquid' },
      z.number().min(0),
    ),
    vesselExpansionPerK: quantity(
      { unit: '1/K', symbol: 'β_v', description: 'Cubic expansion of the wall' },
      z.number().min(0),
    ),
    compressibilityPerPa: quantity(
      { unit: '1/Pa', symbol: 'κ', description: 'Isothermal compressibility of the liquid' },
      z.number().positive(),
    ),
    diameterOverThickness: quantity(
      { unit: '1', symbol: 'D/e', description: 'Diameter over wall thickness' },
      z.number().min(0),
    ),
    elasticModulusPa: quantity(
      { unit: 'Pa', symbol: 'E', description: 'Elastic modulus of the wall' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    pressureRisePaPerK: quantity({ unit: 'Pa/K', symbol: 'dp/dT', description: 'Pressure rise per kelvin' }),
  }),
  formula: String.raw`\frac{dp}{dT} = \frac{\beta_l - \beta_v}{\kappa + D/(e\,E)}`,
  range: 'thin elastic wall, liquid expanding more than the wall',
  source: [commonPractice('blocked-in liquid: expansion against the compressibility of liquid and wall')],
  compute: (inputs, log) => {
    const { liquidExpansionPerK, vesselExpansionPerK, compressibilityPerPa, diameterOverThickness } = inputs;
    if (liquidExpansionPerK < vesselExpansionPerK) {
      return outOfRange({
        field: 'liquidExpansionPerK',
        given: liquidExpansionPerK,
        unit: '1/K',
        allowed: `at least vesselExpansionPerK (${shown(vesselExpansionPerK)} 1/K)`,
      });
    }
    const pressureRisePaPerK =
      (liquidExpansionPerK - vesselExpansionPerK) /
      (compressibilityPerPa + diameterOverThickness / inputs.elasticModulusPa);
    log?.({
      symbol: 'dp/dT',
      formula: '(β_l − β_v) / (κ + D/(e E))',
      substituted: `(${shown(liquidExpansionPerK)} − ${shown(vesselExpansionPerK)}) / (${shown(compressibilityPerPa)} + ${shown(diameterOverThickness)}/${shown(inputs.elasticModulusPa)})`,
      value: pressureRisePaPerK,
      unit: 'Pa/K',
    });
    return succeed({ pressureRisePaPerK });
  },
});
