import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { endFormField } from './end-form.js';
import { coneHalfAngleField, extentField, lengthField } from './geometry-fields.js';
import { type VesselGeometry, vesselGeometry, type VesselSize } from './vessel-geometry.js';

/** An upright vessel with its rim flange and its contents. */
export const vesselFields = {
  innerDiameterM: lengthField('D_i', 'Inner diameter'),
  cylinderLengthM: extentField(
    'L',
    'Length of the cylinder to the rim, the straight flange of the end with it',
  ),
  wallThicknessM: lengthField('e', 'Wall of the cylinder'),
  endThicknessM: lengthField('e_e', 'Wall of the end'),
  form: endFormField,
  coneHalfAngleDeg: coneHalfAngleField.optional(),
  densityKgPerM3: quantity(
    { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the vessel material' },
    z.number().positive(),
  ),
  flangeOuterDiameterM: lengthField('D_f', 'Outer diameter of the rim flange').optional(),
  flangeHeightM: lengthField('h_f', 'Height of the rim flange').optional(),
  fillVolumeM3: quantity(
    { unit: 'm3', symbol: 'V_f', description: 'Volume of the contents at rest' },
    z.number().min(0),
  ).optional(),
};

type VesselInputs = z.output<z.ZodObject<typeof vesselFields>>;

interface CheckedVessel {
  readonly size: VesselSize;
  readonly geometry: VesselGeometry;
  readonly flangeVolume: number;
}

/**
 * The vessel that the inputs describe.
 * @error CALC_OUT_OF_RANGE for a fill above the volume or a flange inside the shell; CALC_INVALID_INPUT for a
 *   cone without angle or half a flange
 */
export const vesselOf = (given: VesselInputs): Outcome<CheckedVessel> => {
  const { flangeOuterDiameterM: flangeOuter, flangeHeightM: flangeHeight, fillVolumeM3 } = given;
  if (given.form === 'conical' && given.coneHalfAngleDeg === undefined) {
    return missingInput('coneHalfAngleDeg', 'a conical end needs half of its opening angle, 10 to 75°');
  }
  if ((flangeOuter === undefined) !== (flangeHeight === undefined)) {
    return missingInput(
      flangeOuter === undefined ? 'flangeOuterDiameterM' : 'flangeHeightM',
      'a rim flange needs both its outer diameter and its height',
    );
  }
  if (given.form.startsWith('torispherical') && given.endThicknessM > given.innerDiameterM / 2) {
    return outOfRange({
      field: 'endThicknessM',
      given: given.endThicknessM,
      unit: 'm',
      allowed: `at most half of the inner diameter (${shown(given.innerDiameterM / 2)} m) for a torispherical end`,
    });
  }
  const size = {
    innerDiameter: given.innerDiameterM,
    cylinderLength: given.cylinderLengthM,
    wallThickness: given.wallThicknessM,
    endThickness: given.endThicknessM,
    form: given.form,
    coneHalfAngleRad: ((given.coneHalfAngleDeg ?? 45) * Math.PI) / 180,
  };
  const geometry = vesselGeometry(size);
  if (flangeOuter !== undefined && flangeOuter < geometry.outerDiameter) {
    return outOfRange({
      field: 'flangeOuterDiameterM',
      given: flangeOuter,
      unit: 'm',
      allowed: `at least the outer diameter of the shell (${shown(geometry.outerDiameter)} m)`,
    });
  }
  if (fillVolumeM3 !== undefined && fillVolumeM3 > geometry.volume * (1 + 1e-12)) {
    return outOfRange({
      field: 'fillVolumeM3',
      given: fillVolumeM3,
      unit: 'm³',
      allowed: `at most the inner volume (${shown(geometry.volume)} m³)`,
    });
  }
  const flangeVolume =
    flangeOuter === undefined
      ? 0
      : (Math.PI / 4) * (flangeOuter ** 2 - geometry.outerDiameter ** 2) * (flangeHeight ?? 0);
  return succeed({ size, geometry, flangeVolume });
};
