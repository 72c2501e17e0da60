import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { published } from '../source-reference.js';
import { codeField, pressureField } from './pressure-fields.js';

/**
 * Hydrostatic test pressure.
 *
 *   ASME VIII-1:          1.3 P (S_test / S)
 *   EN 13445-5, AD 2000:  the higher of 1.25 P (f_test / f) and 1.43 P
 *
 * @param pressurePaGauge P, MAWP or PS [Pa]
 * @param stressRatio     lowest ratio of allowable stress at test to that at the design temperature, ≥ 1 [-]
 * @returns testPressurePaGauge [Pa]
 * @range stressRatio from 1 to 10
 * @error CALC_OUT_OF_RANGE outside the range
 * @source asme-viii-1 UG-99(b); en-13445-5:2021 §10.2.3.3; 2014/68/EU annex I 7.4
 */
export const hydrostaticTest = calculation({
  id: 'strength.hydrostaticTest',
  title: 'Hydrostatic test pressure',
  inputs: z.strictObject({
    code: codeField,
    pressurePaGauge: pressureField,
    stressRatio: quantity(
      {
        unit: '1',
        symbol: 'r',
        description: 'Lowest ratio of allowable stress at test to that at temperature',
      },
      z.number().min(1).max(10),
    ),
  }),
  outputs: z.strictObject({
    testPressurePaGauge: quantity({ unit: 'Pa', symbol: 'P_t', description: 'Test pressure (gauge)' }),
  }),
  formula: String.raw`P_t = \max(1.25\,P\,r,\ 1.43\,P) \quad\text{or}\quad 1.3\,P\,r`,
  range: 'stress ratio from 1 to 10',
  source: [
    published('asme-viii-1 UG-99(b)'),
    published('en-13445-5:2021 §10.2.3.3'),
    published('directive-2014-68-eu annex I 7.4'),
  ],
  compute: ({ code, pressurePaGauge: P, stressRatio: r }, log) => {
    const isAsme = code === 'ASME VIII-1';
    const testPressurePaGauge = isAsme ? 1.3 * P * r : Math.max(1.25 * P * r, 1.43 * P);
    log?.(
      formulaStep({
        symbol: 'P_t',
        formula: isAsme ? '1.3 · P · r' : 'max(1.25 · P · r, 1.43 · P)',
        where: { P, r },
        value: testPressurePaGauge,
        unit: 'Pa',
        note: isAsme ? 'UG-99(b)' : 'PED annex I 7.4',
      }),
    );
    return succeed({ testPressurePaGauge });
  },
});
