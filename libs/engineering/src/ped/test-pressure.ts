import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';

const stress = (symbol: string, description: string) =>
  quantity({ unit: 'Pa', symbol, description }, z.number().positive());

/**
 * Hydrostatic test pressure of a vessel. The two terms cross at a stress ratio of 1.144.
 *
 *   p_t = max(1.43 PS; 1.25 PS f_a / f_t)
 *
 * @param maxPressureBarGauge          PS [bar, gauge]
 * @param designStressAtTestPa         f_a at the temperature of the test [Pa]
 * @param designStressAtMaxTemperaturePa f_t at TS [Pa]
 * @returns testPressureBarGauge p_t [bar, gauge], and the term that governs
 * @range PS > 0, f_a > 0, f_t > 0; the strength of every part at p_t is a load case of its own
 * @error CALC_OUT_OF_RANGE outside the range
 * @source 2014/68/EU annex I 7.4; stress ratio en-13445-5 §10.2.3.3
 */
export const testPressure = calculation({
  id: 'ped.testPressure',
  title: 'Hydrostatic test pressure',
  inputs: z.strictObject({
    maxPressureBarGauge: quantity(
      { unit: 'bar', symbol: 'PS', description: 'Maximum allowable pressure, gauge' },
      z.number().positive(),
    ),
    designStressAtTestPa: stress('f_a', 'Design stress at the temperature of the test'),
    designStressAtMaxTemperaturePa: stress('f_t', 'Design stress at the highest allowable temperature'),
  }),
  outputs: z.strictObject({
    testPressureBarGauge: quantity({ unit: 'bar', symbol: 'p_t', description: 'Test pressure, gauge' }),
    governs: z.enum(['1.43 PS', '1.25 PS fa/ft']).meta({ description: 'Term that governs' }),
  }),
  formula: String.raw`p_t = \max\left(1.43\,PS,\ 1.25\,PS\,\frac{f_a}{f_t}\right)`,
  range: 'PS > 0, f_a > 0, f_t > 0',
  source: [published('2014/68/EU annex I 7.4'), fromMemory('en-13445-5 §10.2.3.3 (clause number)')],
  compute: (inputs, log) => {
    const { maxPressureBarGauge: ps, designStressAtTestPa: fa, designStressAtMaxTemperaturePa: ft } = inputs;
    const flat = 1.43 * ps;
    const byStress = (1.25 * ps * fa) / ft;
    const testPressureBarGauge = Math.max(flat, byStress);
    const governs: '1.43 PS' | '1.25 PS fa/ft' = byStress > flat ? '1.25 PS fa/ft' : '1.43 PS';
    log?.({
      symbol: 'p_t',
      formula: 'max(1.43 PS; 1.25 PS f_a/f_t)',
      substituted: `max(1.43 × ${shown(ps)}; 1.25 × ${shown(ps)} × ${shown(fa)}/${shown(ft)})`,
      value: testPressureBarGauge,
      unit: 'bar',
    });
    return succeed({ testPressureBarGauge, governs });
  },
});
