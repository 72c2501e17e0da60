import type { Outcome, Step } from '@flangewise/model';
import type { PressureCode } from './pressure-fields.js';

/** A torispherical end in service, corroded [m, Pa]. Radii are those of the inner surface. */
export interface TorisphericalEnd {
  readonly thickness: number;
  readonly crownRadius: number;
  readonly knuckleRadius: number;
  /** Outside of the cylindrical skirt. ASME's formula does not need it. */
  readonly outerDiameter?: number | undefined;
  /** By how much corrosion has widened the radii: the form of the end is that of the radii without it. */
  readonly corrosion?: number | undefined;
  readonly allowableStress: number;
  readonly jointEfficiency: number;
}

export type TorisphericalShape = Omit<TorisphericalEnd, 'thickness'>;

/** What a code says of a torispherical end. */
export interface TorisphericalRule {
  /** Permissible pressure [Pa]. */
  pressure(end: TorisphericalEnd, log?: (step: Step) => void): Outcome<number>;
  /** Required thickness [m]. */
  thickness(shape: TorisphericalShape, pressure: number): Outcome<number>;
}

/**
 * The outer diameter, where it is given or follows from the proportions: R = D_a, r = 0.1 D_a (DIN 28011) or
 * R = 0.8 D_a, r = 0.154 D_a (DIN 28013), each within 1 %.
 */
export const outerDiameterOf = ({
  outerDiameter,
  crownRadius,
  knuckleRadius,
}: Pick<TorisphericalEnd, 'outerDiameter' | 'crownRadius' | 'knuckleRadius'>): number | undefined => {
  if (outerDiameter !== undefined) return outerDiameter;
  const proportion = knuckleRadius / crownRadius;
  if (Math.abs(proportion / 0.1 - 1) <= 0.01) return crownRadius;
  if (Math.abs(proportion / 0.1925 - 1) <= 0.01) return crownRadius / 0.8;
  return undefined;
};

/** The thickest end that each code's formula reaches [m]. */
export const thickestTorispherical: Readonly<
  Record<PressureCode, (shape: { readonly outerDiameter: number; readonly knuckleRadius: number }) => number>
> = {
  'EN 13445-3': ({ outerDiameter, knuckleRadius }) => Math.min(0.08 * outerDiameter, knuckleRadius / 2),
  'ASME VIII-1': ({ knuckleRadius }) => knuckleRadius / 3,
  'AD 2000': ({ outerDiameter }) => 0.1 * outerDiameter,
};
