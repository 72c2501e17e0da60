import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';
import {
  asymmetryField,
  couplingField,
  horizontalField,
  travelField,
  verticalField,
} from './lifting-fields.js';
import { type HandCoupling, liftingMultipliers, productOf } from './lifting-multipliers.js';

/** Part of a vessel that a person lifts off and on again. */
export interface HandledMass {
  /** Times a day that the part is lifted; off and on again are two. */
  readonly liftsPerDay: number;
  readonly referenceMassKg?: number | undefined;
  readonly horizontalM?: number | undefined;
  readonly verticalM?: number | undefined;
  readonly travelM?: number | undefined;
  readonly asymmetryDeg?: number | undefined;
  readonly coupling?: HandCoupling | undefined;
}

/** A cover lifted off a vessel in a stand: reached over the rim at bench height, set down beside it. */
const ofACover = {
  referenceMassKg: 25,
  horizontalM: 0.4,
  verticalM: 0.9,
  travelM: 0.3,
  asymmetryDeg: 30,
  coupling: 'fair',
} as const;

/** Cumulative mass of a day [kg per 8 h], carried less than 20 m. */
const dailyMassKg = 10_000;
const minutesOfShift = 480;

interface HandledLimit {
  readonly recommendedLimitKg: number;
  readonly byTaskKg: number;
  readonly byDayKg: number;
  readonly factors: readonly number[];
}

/** Below this mass the standard does not apply [kg]. */
export const leastHandledMassKg = 3;

const limitOf = (task: HandledMass): HandledLimit => {
  const setting = {
    horizontalM: task.horizontalM ?? ofACover.horizontalM,
    verticalM: task.verticalM ?? ofACover.verticalM,
    travelM: task.travelM ?? ofACover.travelM,
    asymmetryDeg: task.asymmetryDeg ?? ofACover.asymmetryDeg,
    coupling: task.coupling ?? ofACover.coupling,
    frequencyPerMin: task.liftsPerDay / minutesOfShift,
    // A part that is lifted now and then over the day is a short task with recovery between.
    durationH: task.liftsPerDay / minutesOfShift <= 0.2 ? 1 : 8,
  };
  const multipliers = liftingMultipliers(setting);
  const byTaskKg = (task.referenceMassKg ?? ofACover.referenceMassKg) * productOf(multipliers);
  const byDayKg = dailyMassKg / Math.max(1, task.liftsPerDay);
  return {
    recommendedLimitKg: Math.min(byTaskKg, byDayKg),
    byTaskKg,
    byDayKg,
    factors: Object.values<number>({ ...multipliers }),
  };
};

/** Mass that one person may handle at a frequency a day [kg]; above it a lift is needed. */
export const recommendedHandledMassKg = (task: HandledMass): number => limitOf(task).recommendedLimitKg;

/**
 * Mass that one person may lift at a frequency a day, and whether a handled mass needs a lift.
 *
 *   m_lim = min(m_ref · HM · VM · DM · AM · FM · CM; 10 000 kg / lifts a day)
 *
 * @param massKg          m, handled mass [kg]
 * @param liftsPerDay     lifts in a shift of 8 h
 * @param referenceMassKg m_ref by the people at work: 25 kg adults by default, 15 kg for the young and the old
 * @returns recommendedLimitKg m_lim [kg], utilisation m/m_lim where m_lim > 0, needsLift
 * @range one person, two hands; m from 3 kg, below that no lift is asked for
 * @error CALC_OUT_OF_RANGE outside the schema
 * @source iso-11228-1:2003 (scope; reference mass and 10 000 kg a day from memory); multipliers niosh-94-110
 */
export const handledMass = calculation({
  id: 'lifting.handledMass',
  title: 'Handled mass and need of a lift',
  inputs: z.strictObject({
    massKg: quantity(
      { unit: 'kg', symbol: 'm', description: 'Handled mass' },
      z.number().positive().max(1e5),
    ),
    liftsPerDay: quantity(
      { unit: '/d', symbol: 'n', description: 'Lifts in a shift of 8 h; off and on again are two' },
      z.number().positive().max(7200),
    ),
    referenceMassKg: quantity(
      { unit: 'kg', symbol: 'm_ref', description: 'Reference mass; 25 kg where nothing is given' },
      z.number().min(5).max(25),
    ).optional(),
    horizontalM: horizontalField.optional(),
    verticalM: verticalField.optional(),
    travelM: travelField.optional(),
    asymmetryDeg: asymmetryField.optional(),
    coupling: couplingField.optional(),
  }),
  outputs: z.strictObject({
    recommendedLimitKg: quantity({
      unit: 'kg',
      symbol: 'm_lim',
      description: 'Recommended limit for one person',
    }),
    utilisation: quantity({
      unit: '1',
      symbol: 'm/m_lim',
      description: 'Handled mass over limit',
    }).optional(),
    dailyMassKg: quantity({ unit: 'kg', symbol: 'n m', description: 'Mass handled in a day' }),
    needsLift: z.boolean().meta({ description: 'Handled mass above the limit' }),
  }),
  formula: String.raw`m_\text{lim} = \min\left(m_\text{ref} \cdot HM \cdot VM \cdot DM \cdot AM \cdot FM \cdot CM,\ \frac{10\,000\,\text{kg}}{n}\right)`,
  range: 'one person, two hands; without a setting: cover at H 0.4 m, V 0.9 m, D 0.3 m, A 30°, fair coupling',
  source: [
    published('iso-11228-1 scope: from 3 kg'),
    published('niosh-94-110 (rev. 2021), multipliers'),
    fromMemory('iso-11228-1:2003 reference mass 25 kg and 10 000 kg a day'),
    commonPractice('setting of a cover lifted off a vessel in a stand'),
  ],
  compute: ({ massKg, ...task }, log) => {
    const { recommendedLimitKg, byTaskKg, byDayKg, factors } = limitOf(task);
    log?.({
      symbol: 'm_lim',
      formula: 'min(m_ref HM VM DM AM FM CM; 10 000/n)',
      substituted: `min(${shown(task.referenceMassKg ?? ofACover.referenceMassKg)} × ${factors.map(shown).join(' × ')} = ${shown(byTaskKg)}; ${shown(byDayKg)})`,
      value: recommendedLimitKg,
      unit: 'kg',
      note: 'reference mass and daily mass from memory, unverified',
    });
    return succeed({
      recommendedLimitKg,
      ...(recommendedLimitKg > 0 ? { utilisation: massKg / recommendedLimitKg } : {}),
      dailyMassKg: massKg * task.liftsPerDay,
      needsLift: massKg >= leastHandledMassKg && massKg > recommendedLimitKg,
    });
  },
});
