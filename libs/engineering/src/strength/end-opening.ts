import { type Outcome, succeed } from '@flangewise/model';
import { type EndForm, torisphericalProportions } from '../geometry/end-form.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { openingPressureOf } from './opening-rule.js';

/** A vessel end with an opening in its centre, new [m, Pa]. */
export interface OpenedEnd {
  readonly form: EndForm;
  readonly innerDiameterM: number;
  readonly endThicknessM: number;
  readonly allowableStressPa: number;
  readonly corrosionAllowanceM?: number | undefined;
  readonly endOpeningDiameterM?: number | undefined;
  readonly endBranchThicknessM?: number | undefined;
}

/** Largest opening of a dished or conical end over its diameter; the knuckle stays free. */
const widestShare = 0.6;

/** Inside radius of the sphere in which the centre of the end lies [m]. */
const crownRadius = ({ form, innerDiameterM: Di, endThicknessM }: OpenedEnd): number => {
  switch (form) {
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013':
      return torisphericalProportions[form].crown * (Di + 2 * endThicknessM);
    case '2:1 ellipsoidal':
      return 0.9 * Di;
    case 'hemispherical':
    case 'flat':
    case 'conical':
      return Di / 2;
  }
};

/**
 * Permissible pressure of an end at an opening in its centre, corroded. `unopened` is that of the end without it.
 *
 *   dished end: pressure-area balance on a sphere of the crown radius, the branch helping
 *   flat end:   P (D_i − d)/D_i, nothing helping
 *   cone:       the opening stands at the point and takes the cone's tip away, so it weakens nothing
 *
 * @error CALC_OUT_OF_RANGE for an opening above 0.6 of the diameter, or a branch without bore
 * @source en-13445-3:2021 §9.5.2, §10.6 (from memory, unverified)
 */
export const endOpeningPressure = (end: OpenedEnd, unopened: number): Outcome<number> => {
  const {
    corrosionAllowanceM: c = 0,
    endOpeningDiameterM: opening = 0,
    endBranchThicknessM: branch = 0,
  } = end;
  if (opening === 0) return succeed(unopened);
  const innerDiameter = end.innerDiameterM + 2 * c;
  if (opening > widestShare * end.innerDiameterM) {
    return outOfRange({
      field: 'endOpeningDiameterM',
      given: opening,
      unit: 'm',
      allowed: `up to 0.6 of the inner diameter (${shown(widestShare * end.innerDiameterM)} m)`,
    });
  }
  if (branch >= opening / 2) {
    return outOfRange({
      field: 'endBranchThicknessM',
      given: branch,
      unit: 'm',
      allowed: `less than half of the diameter of the branch (${shown(opening / 2)} m)`,
    });
  }
  if (end.form === 'conical') return succeed(unopened);
  if (end.form === 'flat') {
    // A hole grows by corrosion; a branch keeps its outer diameter.
    const lost = branch > 0 ? opening : opening + 2 * c;
    return succeed(unopened * (1 - lost / innerDiameter));
  }
  const branchThickness = Math.max(0, branch - c);
  return succeed(
    openingPressureOf({
      shape: 'sphere',
      innerRadius: crownRadius(end) + c,
      thickness: end.endThicknessM - c,
      outerDiameter: branchThickness > 0 ? opening : opening + 2 * Math.max(0, c - branch),
      branchThickness,
      branchLength: Infinity,
      stress: end.allowableStressPa,
      branchStress: end.allowableStressPa,
    }),
  );
};
