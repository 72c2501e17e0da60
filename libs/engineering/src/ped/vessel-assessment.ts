import { z } from 'zod';
import { type Basis, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { findFluid } from '../fluid/fluid-data.js';
import { vapourPressure } from '../fluid/vapour-pressure.js';
import { basisSchema, weakestBasis } from '../materials/basis.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { classifyVessel, disputedAdvice, pedCategories, type VesselClass } from './annex-ii-vessels.js';
import { conformityOf, dutiesOf } from './conformity-modules.js';
import { fluidGroupOf } from './fluid-group.js';
import { type FluidState, fluidStateOf } from './fluid-state.js';
import { findSubstanceHazards, type SubstanceHazards } from './substance-hazards.js';
import { testPressure } from './test-pressure.js';
import { maxPressureField, volumeField } from './vessel-category.js';

/** A fluid in a chamber. Without a vapour pressure the tables of the fluids are asked. */
export interface ChamberFluid {
  readonly substance: string;
  /** At TS, absolute [Pa]. */
  readonly vapourPressurePaAbs?: number | undefined;
}

export interface Chamber {
  readonly volumeL: number;
  readonly maxPressureBarGauge: number;
  readonly maxTemperatureK: number;
  readonly fluids: readonly ChamberFluid[];
}

interface FluidFinding {
  readonly fluidGroup: 1 | 2;
  readonly groupReason: string;
  readonly state: FluidState;
  readonly stateReason: string;
  readonly basis: Basis;
}

type StateFinding = Pick<FluidFinding, 'state' | 'stateReason'>;

const byPressure = (substance: string, pressurePaAbs: number): StateFinding => {
  const state = fluidStateOf(pressurePaAbs);
  return {
    state,
    stateReason: `${substance}: vapour pressure at TS ${shown(pressurePaAbs / 1e5)} bar absolute, ${state === 'gas' ? 'above' : 'not above'} 1.513 bar`,
  };
};

/** From the tables of the fluids: vapour pressure, and below the reach of its row the normal boiling point. */
const byTables = (substance: string, temperatureK: number): StateFinding => {
  const pressure = vapourPressure.compute({ substance, temperatureK });
  if (pressure.ok) return byPressure(substance, pressure.value.pressurePaAbs);
  const fluid = findFluid(substance);
  const boilingK = fluid.ok ? fluid.value.normalBoilingPointK : undefined;
  if (boilingK !== undefined && temperatureK <= boilingK) {
    return {
      state: 'liquid',
      stateReason: `${substance}: TS not above the boiling point of ${shown(boilingK)} K`,
    };
  }
  return {
    state: 'gas',
    stateReason: `${substance}: no vapour pressure at TS is known, taken as gas; give vapourPressurePaAbs`,
  };
};

const stateOf = (
  { substance, vapourPressurePaAbs }: ChamberFluid,
  maxTemperatureK: number,
  { state, lessVolatileThan }: SubstanceHazards,
): StateFinding => {
  if (state === 'gas') return { state, stateReason: `${substance}: a gas at 20 °C` };
  if (vapourPressurePaAbs !== undefined) return byPressure(substance, vapourPressurePaAbs);
  if (lessVolatileThan === undefined) return byTables(substance, maxTemperatureK);
  const bound = byTables(lessVolatileThan, maxTemperatureK);
  return { ...bound, stateReason: `${substance}, less volatile than ${bound.stateReason}` };
};

const findingOf = (fluid: ChamberFluid, maxTemperatureK: number): Outcome<FluidFinding> => {
  const group = fluidGroupOf(fluid.substance, maxTemperatureK);
  if (!group.ok) return group;
  const hazards = findSubstanceHazards(fluid.substance);
  if (!hazards.ok) return hazards;
  return succeed({
    fluidGroup: group.value.fluidGroup,
    groupReason: group.value.reason,
    basis: group.value.basis,
    ...stateOf(fluid, maxTemperatureK, hazards.value),
  });
};

export interface ChamberClass extends VesselClass {
  readonly fluidGroup: 1 | 2;
  readonly groupReason: string;
  readonly fluidState: FluidState;
  readonly stateReason: string;
  readonly basis: Basis;
}

/**
 * Category of a chamber by all fluids that it can hold. The strictest group holds for all: the gas above a liquid of
 * group 1 carries its vapour. One gas makes the chamber a gas chamber, with its whole volume.
 *
 * @error CALC_UNKNOWN_SUBSTANCE
 */
export const classifyChamber = ({
  fluids,
  maxTemperatureK,
  volumeL,
  maxPressureBarGauge,
}: Chamber): Outcome<ChamberClass> => {
  const findings: FluidFinding[] = [];
  for (const fluid of fluids) {
    const finding = findingOf(fluid, maxTemperatureK);
    if (!finding.ok) return finding;
    findings.push(finding.value);
  }
  const strictest = findings.find(({ fluidGroup }) => fluidGroup === 1);
  const gas = findings.find(({ state }) => state === 'gas');
  const fluidGroup = strictest === undefined ? 2 : 1;
  const fluidState = gas === undefined ? 'liquid' : 'gas';
  return succeed({
    ...classifyVessel({ volumeL, maxPressureBarGauge, fluidState, fluidGroup }),
    fluidGroup,
    groupReason: strictest?.groupReason ?? findings.map(({ groupReason }) => groupReason).join('; '),
    fluidState,
    stateReason: gas?.stateReason ?? findings.map(({ stateReason }) => stateReason).join('; '),
    basis: weakestBasis(findings.map(({ basis }) => basis)),
  });
};

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
    category: z.enum(pedCategories),
    table: quantity({ unit: '1', symbol: 'table', description: 'Table of annex II, 0 where out of scope' }),
    fluidGroup: quantity({ unit: '1', symbol: 'group', description: 'Fluid group, 1 or 2' }),
    groupReason: z.string(),
    fluidState: z.enum(['gas', 'liquid']),
    stateReason: z.string(),
    disputed: z.boolean(),
    advice: z.string().meta({ description: 'What to do in a disputed case; else empty' }),
    modules: z
      .array(z.string())
      .meta({ description: 'One to be chosen; those of a higher category may be chosen' }),
    notifiedBody: z.boolean(),
    ceMarking: z.boolean().meta({ description: 'CE marking under this directive' }),
    duties: z.array(z.string()),
    testPressureBarGauge: quantity({
      unit: 'bar',
      symbol: 'p_t',
      description: 'Hydrostatic test pressure, gauge',
    }),
    testPressureNote: z.string(),
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
