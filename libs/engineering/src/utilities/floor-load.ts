import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { atLeastZero, nameField, positive, sumOf } from './utilities-fields.js';

const standardGravity = 9.806_65;

const part = z.strictObject({
  name: nameField,
  massKg: atLeastZero('kg', 'm_i', 'Mass of one, as it stands on the floor'),
  count: quantity(
    { unit: '1', symbol: 'n_i', description: 'How many; 1 unless given' },
    z.number().int().min(0).max(1000),
  ).default(1),
});

/** A stiff frame on an uneven floor stands on three feet, whatever their number. */
const feetThatCarry = (feet: number): number => Math.min(feet, 3);

/**
 * Mass on the floor, the pressure below the footprint, and the load of a foot.
 *
 *   F = φ g Σ n_i m_i,  p = F / A,  F_1 = F / min(n_F, 3)
 *
 * @param parts          name, massKg m_i, count n_i; contents and test water are parts too
 * @param footprintM2    A [m²]; footCount n_F, footAreaM2 of one
 * @param dynamicFactor  φ for stirring and impact, 1 unless given [-]
 * @param allowablePressurePa of the floor [Pa]
 * @returns massKg, forceN, floorPressurePa, footForceN, footPressurePa; utilisation of the floor
 * @range weight spread evenly over the feet that carry: the centre lies in their middle (geometry.centreOfGravity)
 * @error CALC_INVALID_INPUT for the area of a foot without their number
 * @source weight: physics; three carrying feet: common practice
 */
export const floorLoad = calculation({
  id: 'utilities.floorLoad',
  title: 'Mass and load on the floor',
  inputs: z.strictObject({
    parts: z.array(part).min(1).max(1000),
    footprintM2: positive('m2', 'A', 'Area that the system covers').optional(),
    footCount: quantity(
      { unit: '1', symbol: 'n_F', description: 'Number of feet or castors' },
      z.number().int().min(1).max(100),
    ).optional(),
    footAreaM2: positive('m2', 'A_1', 'Area with which a foot stands on the floor').optional(),
    dynamicFactor: quantity(
      { unit: '1', symbol: 'φ', description: 'Factor for stirring and impact; 1 unless given' },
      z.number().min(1).max(10),
    ).default(1),
    allowablePressurePa: positive('Pa', 'p_a', 'Load that the floor carries').optional(),
  }),
  outputs: z.strictObject({
    massKg: quantity({ unit: 'kg', symbol: 'm', description: 'Mass on the floor' }),
    forceN: quantity({ unit: 'N', symbol: 'F', description: 'Force on the floor' }),
    floorPressurePa: quantity({
      unit: 'Pa',
      symbol: 'p',
      description: 'Mean load of the footprint',
    }).optional(),
    footForceN: quantity({
      unit: 'N',
      symbol: 'F_1',
      description: 'Load of the foot that carries most',
    }).optional(),
    footPressurePa: quantity({
      unit: 'Pa',
      symbol: 'p_1',
      description: 'Pressure below that foot',
    }).optional(),
    utilisation: quantity({
      unit: '1',
      symbol: 'u',
      description: 'Load of the footprint over that of the floor',
    }).optional(),
  }),
  formula: String.raw`F = \varphi\,g \sum n_i m_i,\quad p = \frac{F}{A},\quad F_1 = \frac{F}{\min(n_F, 3)}`,
  range: 'centre of gravity in the middle of the feet; earthquake and wind not counted',
  source: [
    published('standard-gravity'),
    commonPractice('utilities-practice three feet carry a stiff frame'),
  ],
  compute: (given, log) => {
    const { parts, footprintM2, footCount, footAreaM2, dynamicFactor, allowablePressurePa } = given;
    if (footAreaM2 !== undefined && footCount === undefined) {
      return missingInput('footCount', 'the area of a foot needs the number of feet');
    }
    const massKg = sumOf(parts, ({ massKg: each, count }) => each * count);
    const forceN = dynamicFactor * standardGravity * massKg;
    const floorPressurePa = footprintM2 === undefined ? undefined : forceN / footprintM2;
    const footForceN = footCount === undefined ? undefined : forceN / feetThatCarry(footCount);
    log?.({
      symbol: 'm',
      formula: 'Σ n_i m_i',
      substituted: parts.map(({ massKg: each, count }) => `${String(count)} × ${shown(each)}`).join(' + '),
      value: massKg,
      unit: 'kg',
    });
    log?.({
      symbol: 'F',
      formula: 'φ g m',
      substituted: `${shown(dynamicFactor)} × ${shown(standardGravity)} × ${shown(massKg)}`,
      value: forceN,
      unit: 'N',
    });
    if (floorPressurePa !== undefined) {
      log?.({
        symbol: 'p',
        formula: 'F / A',
        substituted: `${shown(forceN)} / ${shown(footprintM2 ?? 0)}`,
        value: floorPressurePa,
        unit: 'Pa',
      });
    }
    if (footForceN !== undefined) {
      log?.({
        symbol: 'F_1',
        formula: 'F / min(n_F, 3)',
        substituted: `${shown(forceN)} / ${String(feetThatCarry(footCount ?? 1))}`,
        value: footForceN,
        unit: 'N',
      });
    }
    return succeed({
      massKg,
      forceN,
      ...(floorPressurePa === undefined ? {} : { floorPressurePa }),
      ...(footForceN === undefined ? {} : { footForceN }),
      ...(footForceN === undefined || footAreaM2 === undefined
        ? {}
        : { footPressurePa: footForceN / footAreaM2 }),
      ...(floorPressurePa === undefined || allowablePressurePa === undefined
        ? {}
        : { utilisation: floorPressurePa / allowablePressurePa }),
    });
  },
});
