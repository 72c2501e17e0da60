import { type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { type EndForm, torisphericalProportions } from '../geometry/end-form.js';
import { missingInput } from '../missing-input.js';
import { conicalCodes, conicalEndPressure } from './conical-end.js';
import { coneAngle } from './conical-fields.js';
import { ellipsoidalCodes, ellipsoidalRules, thickestEllipsoidal } from './ellipsoidal-rules.js';
import { flatEndLoadFactor } from './flat-end-rule.js';
import type { PressureCode } from './pressure-fields.js';
import { sphereRules } from './sphere-rules.js';
import { thickestTorispherical } from './torispherical-rule.js';
import { torisphericalRules } from './torispherical-rules.js';
import { wallLoad } from './wall-calculation.js';

/** The end of a vessel, nominal, with the corrosion that it must outlive [m, Pa]. */
export interface VesselEnd {
  readonly code: PressureCode;
  readonly form: EndForm;
  readonly innerDiameter: number;
  readonly thickness: number;
  readonly cylinderThickness: number;
  readonly corrosionAllowance: number;
  readonly coneHalfAngleDeg: number | undefined;
  readonly attachmentFactor: number | undefined;
  readonly allowableStress: number;
  readonly jointEfficiency: number;
}

/**
 * Attachment factor of a flat end where none is given. 0.41 is √(1/6), the limit load of a simply supported
 * plate, so it needs no help from the shell; 0.33 is the highest C of UG-34 for welded ends.
 */
const usualAttachment = (code: PressureCode): number => (code === 'ASME VIII-1' ? 0.33 : 0.41);

/**
 * Permissible pressure of the end of a vessel in corroded state. A dished end thicker than its code's formula
 * reaches counts as the thickest that it reaches.
 *
 * @error CALC_OUT_OF_RANGE, CALC_INVALID_INPUT from the code's rule
 */
export const endRating = (end: VesselEnd, log?: StepLog): Outcome<number> => {
  const { code, form, corrosionAllowance: c, allowableStress, jointEfficiency } = end;
  const thickness = end.thickness - c;
  const innerDiameter = end.innerDiameter + 2 * c;
  switch (form) {
    case 'flat':
      return succeed(
        (allowableStress * (Math.min(thickness, innerDiameter) / innerDiameter) ** 2) /
          flatEndLoadFactor(code, end.attachmentFactor ?? usualAttachment(code)),
      );
    case 'hemispherical': {
      const carried = wallLoad(sphereRules, { code, innerDiameter, thickness }, 'endThicknessM');
      return carried.ok ? succeed(carried.value.value * allowableStress * jointEfficiency) : carried;
    }
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013': {
      const outerDiameter = end.innerDiameter + 2 * end.thickness;
      const { crown, knuckle } = torisphericalProportions[form];
      const shape = {
        crownRadius: crown * outerDiameter + c,
        knuckleRadius: knuckle * outerDiameter + c,
        outerDiameter,
        corrosion: c,
        allowableStress,
        jointEfficiency,
      };
      const counted = Math.min(thickness, thickestTorispherical[code](shape));
      return torisphericalRules[code].pressure({ ...shape, thickness: counted }, log);
    }
    case '2:1 ellipsoidal': {
      const known = ellipsoidalCodes.find((candidate) => candidate === code);
      if (known === undefined)
        return missingInput('code', 'a 2:1 ellipsoidal end needs EN 13445-3 or ASME VIII-1');
      const counted = Math.min(thickness, thickestEllipsoidal[known](innerDiameter));
      return ellipsoidalRules[known].pressure(
        { innerDiameter, allowableStress, jointEfficiency },
        counted,
        log,
      );
    }
    case 'conical': {
      const known = conicalCodes.find((candidate) => candidate === code);
      if (known === undefined) {
        return missingInput('code', 'a conical end needs EN 13445-3 or ASME VIII-1');
      }
      const angle = end.coneHalfAngleDeg;
      if (angle === undefined) {
        return missingInput('coneHalfAngleDeg', 'a conical end needs half of its opening angle, 10 to 60°');
      }
      const halfAngle = coneAngle(known, angle);
      if (!halfAngle.ok) return halfAngle;
      return succeed(
        conicalEndPressure(
          {
            code: known,
            thickness,
            innerDiameter,
            cylinderThickness: end.cylinderThickness - c,
            halfAngleRad: halfAngle.value,
            allowableStress,
            jointEfficiency,
          },
          log,
        ),
      );
    }
  }
};
