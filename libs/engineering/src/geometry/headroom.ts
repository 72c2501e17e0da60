import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { commonPractice } from '../source-reference.js';
import { distance, extentField, lengthField } from './geometry-fields.js';

const usualClearance = 0.1;

/**
 * Height needed to open a vessel, whether the lift raises the cover with its drive or lowers the vessel.
 *
 *   s = L_i + a                                        stroke that brings the internals clear of the rim
 *   cover rises:     H = h_r + h_c + s                 highest point with the cover up
 *   vessel lowers:   H = h_r + h_c,  and h_b − s ≥ 0   the vessel must not meet the floor
 *
 * @param moving what the lift moves
 * @returns strokeNeededM s, heightNeededM H, headroomReserveM to the ceiling, strokeReserveM, floorReserveM [m]
 * @range lengths from zero; clearance 0.1 m unless given
 * @error CALC_OUT_OF_RANGE from the schema
 * @source geometry; clearance: common practice
 */
export const headroom = calculation({
  id: 'geometry.headroom',
  title: 'Headroom to open the vessel',
  inputs: z.strictObject({
    moving: z.enum(['cover rises', 'vessel lowers']).meta({ description: 'What the lift moves' }),
    floorToRimM: lengthField('h_r', 'Height of the closed rim above the floor'),
    coverStackHeightM: extentField('h_c', 'Height of cover, coupling and drive above the rim'),
    internalsLengthM: extentField('L_i', 'Length of the longest internal below the rim'),
    clearanceM: extentField('a', 'Clearance; 0.1 m unless given').optional(),
    ceilingHeightM: lengthField('H_c', 'Height of the ceiling or of the lowest obstacle'),
    liftStrokeM: extentField('s_L', 'Stroke of the lift').optional(),
    floorToBottomM: extentField('h_b', 'Height of the lowest part of the vessel above the floor').optional(),
  }),
  outputs: z.strictObject({
    strokeNeededM: distance('s', 'Stroke that the lift must have'),
    heightNeededM: distance('H', 'Height that the system needs when open'),
    headroomReserveM: distance('r_H', 'Ceiling less the height needed; negative: it does not fit'),
    strokeReserveM: distance('r_s', 'Stroke of the lift less the stroke needed').optional(),
    floorReserveM: distance('r_b', 'Room left below the lowered vessel').optional(),
  }),
  formula: String.raw`H = h_r + h_c + s,\quad s = L_i + a`,
  range: 'lengths from zero; straight vertical stroke',
  source: [commonPractice('clearance 0.1 m between internals and rim')],
  compute: (given, log) => {
    const {
      floorToRimM: h_r,
      coverStackHeightM: h_c,
      internalsLengthM: L_i,
      clearanceM: a = usualClearance,
    } = given;
    const s = L_i + a;
    const rises = given.moving === 'cover rises';
    const H = rises ? h_r + h_c + s : h_r + h_c;
    log?.(formulaStep({ symbol: 's', formula: 'L_i + a', where: { L_i, a }, value: s, unit: 'm' }));
    log?.(
      formulaStep({
        symbol: 'H',
        formula: rises ? 'h_r + h_c + s' : 'h_r + h_c',
        where: { h_r, h_c, s },
        value: H,
        unit: 'm',
        note: given.moving,
      }),
    );
    log?.(
      formulaStep({
        symbol: 'r_H',
        formula: 'H_c − H',
        where: { H_c: given.ceilingHeightM, H },
        value: given.ceilingHeightM - H,
        unit: 'm',
      }),
    );
    return succeed({
      strokeNeededM: s,
      heightNeededM: H,
      headroomReserveM: given.ceilingHeightM - H,
      ...(given.liftStrokeM === undefined ? {} : { strokeReserveM: given.liftStrokeM - s }),
      ...(rises || given.floorToBottomM === undefined ? {} : { floorReserveM: given.floorToBottomM - s }),
    });
  },
});
