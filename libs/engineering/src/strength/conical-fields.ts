import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { coneHalfAngleField } from '../geometry/geometry-fields.js';
import { outOfRange } from '../out-of-range.js';
import { type ConicalCode, conicalCodes, steepestCone } from './conical-end.js';
import { allowableStressField, jointEfficiencyField, length } from './pressure-fields.js';

export const conicalFields = {
  code: z.enum(conicalCodes).meta({ description: 'Pressure vessel code' }),
  innerDiameterM: length('D_i', 'Inner diameter of the cylinder, corroded'),
  coneHalfAngleDeg: coneHalfAngleField,
  cylinderThicknessM: length(
    'e_s',
    'Wall of the cylinder at the junction, corroded; that of the cone unless given',
  ).optional(),
  allowableStressPa: allowableStressField,
  jointEfficiency: jointEfficiencyField,
};

/** Half angle in radians, where the code allows it without a knuckle. */
export const coneAngle = (code: ConicalCode, coneHalfAngleDeg: number): Outcome<number> =>
  coneHalfAngleDeg <= steepestCone[code]
    ? succeed((coneHalfAngleDeg * Math.PI) / 180)
    : outOfRange({
        field: 'coneHalfAngleDeg',
        given: coneHalfAngleDeg,
        unit: '°',
        allowed: `10 to ${String(steepestCone[code])}° without a knuckle by ${code}`,
      });

/** Thickest cone that counts as thin: 0.16 of its outer diameter [m]. */
export const thickestCone = (innerDiameter: number): number => (0.16 / (1 - 2 * 0.16)) * innerDiameter;
