import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { basisSchema } from '../materials/basis.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { disputedAdvice } from './annex-ii-vessels.js';
import { classifyChamber } from './classify-chamber.js';
import { conformityOf, dutiesOf, notifiedBodyField } from './conformity-modules.js';
import { testPressure } from './test-pressure.js';
import { maxPressureField, volumeField, vesselClassFields } from './vessel-category.js';

interface Stresses {
  readonly maxPressureBarGauge: number;
  readonly designStressAtTestPa?: number | undefined;
  readonly designStressAtMaxTemperaturePa?: number | undefined;
}

/** Without both stresses the ratio is unknown: 1.43 PS is then a lower bound and says so. */
const testOf = (
  { maxPressureBarGauge, designStressAtTestPa = 1, designStressAtMaxTemperaturePa = 1 }: Stresses,
  log?: StepLog,
) => testPressure.compute({ maxPressureBarGauge, designStressAtTestPa, designStressAtMaxTemperaturePa }, log);

/**
 * Conformity of a vessel chamber under the Pressure Equipment Directive: category, modules, marking, test pressure.
 *
 *   group of the strictest fluid, gas where one fluid is a gas or p_v(TS) > 1.513 bar, table of annex II
 *
 * @param volumeL             V [L]
 * @param maxPressureBarGauge PS [bar, gauge]
 * @param maxTemperatureK     TS [K]
 * @param fluids              everything that the chamber can hold, blanketing gas and heat carrier included
 * @param designStressAtTestPa, designStressAtMaxTemperaturePa for the stress ratio of the test [Pa]
 * @returns category with table and reasons, modules to choose from, duties, test pressure, and the advice where disputed
 * @range one chamber that is not fired; the jacket is a chamber of its own, the strictest chamber counts for the vessel
 * @error CALC_UNKNOWN_SUBSTANCE
 * @source 2014/68/EU art. 4, 13, 14, annex I 7.3, 7.4, annex II
 */
export const vesselAssessment = calculation({
  id: 'ped.vesselAssessment',
  title: 'Conformity assessment of a vessel chamber',
  inputs: z
    .strictObject({
      volumeL: volumeField,
      maxPressureBarGauge: maxPressureField,
      maxTemperatureK: quantity(
        { unit: 'K', symbol: 'TS', description: 'Highest allowable temperature' },
        z.number().min(4).max(1500),
      ),
      fluids: z
        .array(
          z.strictObject({
            substance: z.string().min(1).meta({ description: 'Common name or CAS number' }),
            vapourPressurePaAbs: quantity(
              { unit: 'Pa', symbol: 'p_v', description: 'Vapour pressure at TS, absolute' },
              z.number().min(0),
            ).optional(),
          }),
        )
        .min(1),
      designStressAtTestPa: quantity(
        { unit: 'Pa', symbol: 'f_a', description: 'Design stress at the temperature of the test' },
        z.number().positive(),
      ).optional(),
      designStressAtMaxTemperaturePa: quantity(
        { unit: 'Pa', symbol: 'f_t', description: 'Design stress at TS' },
        z.number().positive(),
      ).optional(),
    })
    .refine(
      (inputs) =>
        (inputs.designStressAtTestPa === undefined) === (inputs.designStressAtMaxTemperaturePa === undefined),
      { path: ['designStressAtMaxTemperaturePa'], message: 'give both design stresses or none' },
    ),
  outputs: z.strictObject({
    ...vesselClassFields,
    fluidGroup: quantity({ unit: '1', symbol: 'group', description: 'Fluid group, 1 or 2' }),
    groupReason: z.string().meta({ description: 'Fluid that sets the group, and why' }),
    fluidState: z.enum(['gas', 'liquid']).meta({ description: 'State at TS that the tables go by' }),
    stateReason: z.string().meta({ description: 'Fluid that sets the state, and why' }),
    modules: z
      .array(z.string())
      .meta({ description: 'One to be chosen; those of a higher category may be chosen' }),
    notifiedBody: notifiedBodyField,
    ceMarking: z.boolean().meta({ description: 'CE marking under this directive' }),
    duties: z.array(z.string()).meta({ description: 'What the category asks of the maker' }),
    testPressureBarGauge: quantity({
      unit: 'bar',
      symbol: 'p_t',
      description: 'Hydrostatic test pressure, gauge',
    }),
    testPressureNote: z.string().meta({ description: 'Which term of the test pressure governs' }),
    momentaryLimitBarGauge: quantity({
      unit: 'bar',
      symbol: 'p_m',
      description: 'Highest short overpressure of the protective device, 1.1 PS, gauge',
    }),
    basis: basisSchema.meta({ description: 'What the classification of the fluids is worth' }),
  }),
  formula: String.raw`\text{category} = g_\text{table}(PS, V, PS \cdot V),\quad p_t = \max(1.43\,PS, 1.25\,PS\,f_a/f_t)`,
  range: 'one chamber, not fired; fluids on file',
  source: [
    published('2014/68/EU art. 4, art. 13, annex I 7.3 and 7.4, annex II'),
    fromMemory('2014/68/EU annex II point 1, modules of categories III and IV'),
  ],
  compute: (inputs, log) => {
    const classified = classifyChamber(inputs);
    if (!classified.ok) return classified;
    const { category, table, disputed, fluidGroup, groupReason, fluidState, stateReason, basis } =
      classified.value;
    log?.({
      symbol: 'group',
      formula: 'article 13',
      substituted: groupReason,
      value: fluidGroup,
      unit: '1',
      note: basis,
    });
    log?.({
      symbol: 'state',
      formula: 'article 4(1)(a)',
      substituted: stateReason,
      value: fluidState,
      unit: '1',
    });
    const { volumeL, maxPressureBarGauge: ps } = inputs;
    log?.({
      symbol: 'category',
      formula: table === 0 ? 'PS ≤ 0.5 bar: article 1(1)' : `annex II table ${String(table)}`,
      substituted: `PS = ${shown(ps)} bar, V = ${shown(volumeL)} L, PS·V = ${shown(ps * volumeL)} bar·L`,
      value: category,
      unit: '1',
      ...(disputed ? { note: `readings of the table differ here: ${disputedAdvice}` } : {}),
    });
    const test = testOf(inputs, log);
    if (!test.ok) return test;
    const { modules, notifiedBody, ceMarking } = conformityOf(category);
    return succeed({
      category,
      table,
      fluidGroup,
      groupReason,
      fluidState,
      stateReason,
      disputed,
      advice: disputed ? disputedAdvice : '',
      modules: [...modules],
      notifiedBody,
      ceMarking,
      duties: [...dutiesOf(category)],
      testPressureBarGauge: test.value.testPressureBarGauge,
      testPressureNote:
        inputs.designStressAtTestPa === undefined
          ? 'lower bound 1.43 PS: the stress ratio was not given'
          : `${test.value.governs} governs`,
      momentaryLimitBarGauge: 1.1 * ps,
      basis,
    });
  },
});
