import { z } from 'zod';
import { cone, type EndProfile, flatDisc, semiEllipsoid, torisphere } from './end-profile.js';

export const endForms = [
  'flat',
  'torispherical DIN 28011',
  'torispherical DIN 28013',
  '2:1 ellipsoidal',
  'hemispherical',
  'conical',
] as const;

export type EndForm = (typeof endForms)[number];

export const endFormField = z.enum(endForms).meta({ description: 'Form of the end' });

/** Inside radii over the diameter after which the standard names the end. */
export const torisphericalProportions = {
  /** DIN 28011: R = D_a, r = 0.1 D_a. */
  'torispherical DIN 28011': { crown: 1, knuckle: 0.1 },
  /** DIN 28013: R = 0.8 D_a, r = 0.154 D_a. */
  'torispherical DIN 28013': { crown: 0.8, knuckle: 0.154 },
} as const;

export interface EndSize {
  readonly form: EndForm;
  /** Diameter of the surface. */
  readonly diameter: number;
  /** Diameter that sets the radii of a torispherical end, D_a of the standards. */
  readonly nominalDiameter: number;
  /** Half of the opening angle of a cone. */
  readonly coneHalfAngleRad: number;
}

/** The inner surface of an end of standard form. */
export const endProfile = ({ form, diameter, nominalDiameter, coneHalfAngleRad }: EndSize): EndProfile => {
  switch (form) {
    case 'flat':
      return flatDisc(diameter);
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013': {
      const { crown, knuckle } = torisphericalProportions[form];
      return torisphere({
        diameter,
        crownRadius: crown * nominalDiameter,
        knuckleRadius: knuckle * nominalDiameter,
      });
    }
    case '2:1 ellipsoidal':
      return semiEllipsoid(diameter, diameter / 4);
    case 'hemispherical':
      return torisphere({ diameter, crownRadius: diameter / 2, knuckleRadius: diameter / 2 });
    case 'conical':
      return cone(diameter, coneHalfAngleRad);
  }
};
