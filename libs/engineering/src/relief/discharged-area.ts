import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { gasSupplyScenario } from './gas-supply-scenario.js';
import { deviceFields, gasSupplyFields, relievingTemperatureField } from './inflow-fields.js';
import { areaM2 } from './relief-fields.js';

/**
 * Area that lets out at the relieving pressure what a gas supply lets in through a regulator failed open.
 *
 *   W by IEC 60534-2-1 from p_s to p_1;  A = W / (K_d G(p_1, p_2))
 *
 * @param relievingPressurePaAbs p_1, backPressurePaAbs p_2 [Pa]; dischargeCoefficient K_d [-], 0.62 where not given
 * @param supplyPressurePaAbs    p_s [Pa], with flow coefficient, x_T and the gas
 * @param relievingTemperatureK  of the gas in the vessel [K], that of the supply where not given
 * @returns massFlowKgPerS W [kg/s]; areaM2 A [m²]; diameterM of a circle of that area [m]
 * @range p_2 < p_1; a supply at or below p_1 gives no inflow
 * @error CALC_OUT_OF_RANGE outside the range
 * @source iec-60534-2-1:2011 gas sizing; api-520-1:2020 sizing for gas or vapour; valve-selection-handbook p. 275 (0.62)
 */
export const dischargedArea = calculation({
  id: 'relief.dischargedArea',
  title: 'Relief area for gas let in by a failed regulator',
  inputs: z.strictObject({
    ...deviceFields,
    ...gasSupplyFields,
    relievingTemperatureK: relievingTemperatureField.optional(),
  }),
  outputs: z.strictObject({
    massFlowKgPerS: quantity({ unit: 'kg/s', symbol: 'W', description: 'Inflow' }),
    areaM2,
    diameterM: quantity({ unit: 'm', symbol: 'd', description: 'Diameter of a circle of that area' }),
  }),
  formula: String.raw`W = N_6 K_v Y \sqrt{x\,p_s \rho_s},\quad A = \frac{W}{K_d\,G(p_1, p_2)}`,
  range:
    'p_2 < p_1, gas only; coefficient 0.62 for a disc with at most 8 diameters of pipe before and 5 behind it',
  source: [
    published('iec-60534-2-1:2011 gas sizing without fittings'),
    published('api-520-1:2020 sizing for gas or vapour'),
    published('valve-selection-handbook p. 275'),
  ],
  compute: (inputs, log) => {
    const scenario = gasSupplyScenario(inputs, log);
    if (!scenario.ok) return scenario;
    return succeed({ ...scenario.value, diameterM: Math.sqrt((4 / Math.PI) * scenario.value.areaM2) });
  },
});
