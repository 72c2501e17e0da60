import { z } from 'zod';
import { fail, succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { api520Edition } from './api-520-edition.js';
import {
  areaM2,
  backPressureCorrection,
  combinationFactor,
  dischargeCoefficient,
  inletPressurePaAbs,
  massFlowKgPerS,
  temperatureK,
} from './relief-fields.js';
import { superheatCorrectionOf, superheatTable } from './superheat-correction.js';

/** Pressure above which Napier's equation is corrected, and the end of that correction [kPa]. */
const napierLimitKPa = 10_339;
const napierEndKPa = 22_057;

const napierCorrectionOf = (pressureKPa: number): number =>
  pressureKPa <= napierLimitKPa ? 1 : (0.02764 * pressureKPa - 1000) / (0.03324 * pressureKPa - 1061);

/**
 * Flow area that relieves steam (Napier's equation).
 *
 *   A = 190.5 W / (p_1 K_d K_b K_c K_N K_SH)     A in mm², W in kg/h, p_1 in kPa
 *   K_N = (0.02764 p_1 − 1000)/(0.03324 p_1 − 1061) above 10 339 kPa, else 1
 *
 * @param massFlowKgPerS         W [kg/s]
 * @param temperatureK           T [K]; at or below saturation K_SH = 1
 * @param inletPressurePaAbs     p_1 [Pa]
 * @param dischargeCoefficient   K_d [-]
 * @param backPressureCorrection K_b [-], 1 where not given
 * @param combinationFactor      K_c [-], 1 where not given
 * @param edition                of API 520 part I whose superheat table is read, 10th where not given
 * @returns areaM2 A [m²]
 * @range critical flow; p_1 ≤ 22.057 MPa (7th: 20.79 MPa); T ≤ 898.15 K (7th: 922.04 K)
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-520-1:2020 sizing for steam, example 4 (p. 91); superheat table of the named edition
 */
export const steamArea = calculation({
  id: 'relief.steamArea',
  title: 'Relief area for steam',
  inputs: z.strictObject({
    massFlowKgPerS,
    temperatureK,
    inletPressurePaAbs,
    dischargeCoefficient,
    backPressureCorrection: backPressureCorrection.optional(),
    combinationFactor: combinationFactor.optional(),
    edition: api520Edition.optional(),
  }),
  outputs: z.strictObject({ areaM2 }),
  formula: String.raw`A = \frac{190.5\,W}{p_1 K_d K_b K_c K_N K_{SH}} \quad (\mathrm{mm^2,\ kg/h,\ kPa}),\quad K_N = \frac{0.02764\,p_1 - 1000}{0.03324\,p_1 - 1061} \text{ above } 10339\ \mathrm{kPa}`,
  range: 'critical flow, p_1 up to 22.057 MPa, T up to 898.15 K (10th edition) or 922.04 K (7th)',
  source: [
    published('api-520-1:2020 sizing for steam, example 4'),
    published('api-520-1:2000 superheat factors'),
    published('fluids-1.3.1 safety_valve'),
  ],
  compute: (inputs, log) => {
    const { massFlowKgPerS: flow, temperatureK: t, inletPressurePaAbs: p1, edition = '10th' } = inputs;
    const table = superheatTable(edition);
    if (table === undefined) {
      return fail({ code: 'CALC_MISSING_PROPERTY', message: `no superheat table of the ${edition} edition` });
    }
    const highestPressure =
      edition === '10th' ? napierEndKPa * 1000 : (table.rows.at(-1)?.pressurePaAbs ?? 0);
    if (p1 > highestPressure) {
      return outOfRange({
        field: 'inletPressurePaAbs',
        given: p1,
        unit: 'Pa',
        allowed: `up to ${shown(highestPressure)} Pa; above it use relief.gasArea`,
      });
    }
    const highestTemperature = table.temperaturesK.at(-1) ?? 0;
    if (t > highestTemperature) {
      return outOfRange({
        field: 'temperatureK',
        given: t,
        unit: 'K',
        allowed: `up to ${shown(highestTemperature)} K; above it use relief.gasArea`,
      });
    }
    const pressureKPa = p1 / 1000;
    const napier = napierCorrectionOf(pressureKPa);
    const superheat = superheatCorrectionOf(table, p1, t);
    const factor =
      inputs.dischargeCoefficient * (inputs.backPressureCorrection ?? 1) * (inputs.combinationFactor ?? 1);
    const area = (190.5e-6 * flow * 3600) / (pressureKPa * factor * napier * superheat);
    if (log) {
      log({
        symbol: 'K_SH',
        formula: 'table over pressure and temperature',
        substituted: `${shown(p1)} Pa, ${shown(t)} K`,
        value: superheat,
        unit: '1',
        note: `API 520 part I, ${edition} edition`,
      });
      log({
        symbol: 'K_N',
        formula: '(0.02764 p_1 − 1000)/(0.03324 p_1 − 1061), 1 up to 10 339 kPa',
        substituted: `p_1 = ${shown(pressureKPa)} kPa`,
        value: napier,
        unit: '1',
      });
      log({
        symbol: 'A',
        formula: '190.5 W / (p_1 K_d K_b K_c K_N K_SH) × 10⁻⁶',
        substituted: `190.5 × ${shown(flow * 3600)} / (${shown(pressureKPa)} × ${shown(factor)} × ${shown(napier)} × ${shown(superheat)}) × 10⁻⁶`,
        value: area,
        unit: 'm2',
      });
    }
    return succeed({ areaM2: area });
  },
});
