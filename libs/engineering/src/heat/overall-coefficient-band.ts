import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

const film = (symbol: string, description: string): z.ZodNumber =>
  heatFields.positive('W/(m2.K)', symbol, description);

/**
 * Overall coefficient as a band: the lower end with both lower films and the fouling, the upper end with both upper films
 * and clean. A measured value replaces both ends.
 *
 *   1/U = 1/h1 + e/k + 1/h2 + R
 *
 * @param firstLowerWPerM2K, firstUpperWPerM2K, secondLowerWPerM2K, secondUpperWPerM2K film coefficients [W/(m²·K)]
 * @param wallThicknessM e [m], wallConductivityWPerMK k [W/(m·K)]
 * @param foulingResistanceM2KPerW R [m²·K/W]
 * @param measuredCoefficientWPerM2K optional [W/(m²·K)]
 * @returns lowerCoefficientWPerM2K, upperCoefficientWPerM2K [W/(m²·K)]
 * @range films on one area, plane wall
 * @error CALC_OUT_OF_RANGE where an upper end is below its lower end
 * @source kern-1950 ch. 6
 */
export const overallCoefficientBand = calculation({
  id: 'heat.overallCoefficientBand',
  title: 'Overall heat transfer coefficient, as a band',
  inputs: z.strictObject({
    firstLowerWPerM2K: film('h1_min', 'Lower end of the first film'),
    firstUpperWPerM2K: film('h1_max', 'Upper end of the first film'),
    secondLowerWPerM2K: film('h2_min', 'Lower end of the second film'),
    secondUpperWPerM2K: film('h2_max', 'Upper end of the second film'),
    wallThicknessM: heatFields.positive('m', 'e', 'Wall thickness'),
    wallConductivityWPerMK: heatFields.positive('W/(m.K)', 'k', 'Thermal conductivity of the wall'),
    foulingResistanceM2KPerW: quantity(
      { unit: 'm2.K/W', symbol: 'R', description: 'Fouling resistance of both sides' },
      z.number().min(0),
    ),
    measuredCoefficientWPerM2K: film('U_m', 'Measured overall coefficient').optional(),
  }),
  outputs: z.strictObject({
    lowerCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'U_min', description: 'Lower end' }),
    upperCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'U_max', description: 'Upper end' }),
  }),
  formula: String.raw`\frac{1}{U} = \frac{1}{h_1} + \frac{e}{k} + \frac{1}{h_2} + R`,
  range: 'films on one area, plane wall',
  source: [published('kern-1950 ch. 6')],
  compute: (inputs, log) => {
    const { firstLowerWPerM2K, firstUpperWPerM2K, secondLowerWPerM2K, secondUpperWPerM2K } = inputs;
    for (const [field, upper, lower] of [
      ['firstUpperWPerM2K', firstUpperWPerM2K, firstLowerWPerM2K],
      ['secondUpperWPerM2K', secondUpperWPerM2K, secondLowerWPerM2K],
    ] as const) {
      if (upper < lower) {
        return outOfRange({
          field,
          given: upper,
          unit: 'W/(m²·K)',
          allowed: `at least the lower end ${shown(lower)}`,
        });
      }
    }
    const measured = inputs.measuredCoefficientWPerM2K;
    if (measured !== undefined) {
      log?.({
        symbol: 'U',
        formula: 'measured',
        substituted: shown(measured),
        value: measured,
        unit: 'W/(m2.K)',
      });
      return succeed({ lowerCoefficientWPerM2K: measured, upperCoefficientWPerM2K: measured });
    }
    const wall = inputs.wallThicknessM / inputs.wallConductivityWPerMK;
    const fouling = inputs.foulingResistanceM2KPerW;
    const lowerCoefficientWPerM2K = 1 / (1 / firstLowerWPerM2K + wall + 1 / secondLowerWPerM2K + fouling);
    const upperCoefficientWPerM2K = 1 / (1 / firstUpperWPerM2K + wall + 1 / secondUpperWPerM2K);
    log?.({
      symbol: 'U_min',
      formula: '1/(1/h1_min + e/k + 1/h2_min + R)',
      substituted: `1/(1/${shown(firstLowerWPerM2K)} + ${shown(wall)} + 1/${shown(secondLowerWPerM2K)} + ${shown(fouling)})`,
      value: lowerCoefficientWPerM2K,
      unit: 'W/(m2.K)',
    });
    log?.({
      symbol: 'U_max',
      formula: '1/(1/h1_max + e/k + 1/h2_max)',
      substituted: `1/(1/${shown(firstUpperWPerM2K)} + ${shown(wall)} + 1/${shown(secondUpperWPerM2K)})`,
      value: upperCoefficientWPerM2K,
      unit: 'W/(m2.K)',
      note: 'clean',
    });
    return succeed({ lowerCoefficientWPerM2K, upperCoefficientWPerM2K });
  },
});
