import type { z } from 'zod';
import { fromMemory, published } from '../source-reference.js';
import { length, type PressureCode } from './pressure-fields.js';
import { ad2000Torispherical } from './torispherical-ad-2000.js';
import { asmeTorispherical } from './torispherical-asme-viii-1.js';
import { en13445Torispherical } from './torispherical-en-13445.js';
import type { TorisphericalRule } from './torispherical-rule.js';

/** The rule of each code for a torispherical end under internal pressure. */
export const torisphericalRules: Readonly<Record<PressureCode, TorisphericalRule>> = {
  'EN 13445-3': en13445Torispherical,
  'ASME VIII-1': asmeTorispherical,
  'AD 2000': ad2000Torispherical,
};

export const torisphericalSources = [
  published('asme-viii-1 UG-32, appendix 1-4(d)'),
  fromMemory('en-13445-3:2021 §7.5.3'),
  fromMemory('ad-2000-b3'),
] as const;

export const torisphericalRange =
  'ASME VIII-1: r from 0.06 L to L, r ≥ 3 t, t/L ≥ 0.002; EN 13445-3: 0.001 ≤ e/De ≤ 0.08, r from 0.06 to 0.2 D, r ≥ 2 e; AD 2000: 0.001 ≤ s/Da ≤ 0.1, DIN 28011 or 28013';

export const torisphericalShapeFields = {
  crownRadiusM: length('R', 'Inside crown radius, L of ASME VIII-1'),
  knuckleRadiusM: length('r', 'Inside knuckle radius'),
  outerDiameterM: length(
    'D_e',
    'Outer diameter; needed by EN 13445-3 and AD 2000, and found from the radii for DIN 28011 and DIN 28013',
  ).optional(),
};

/** The public fields as a shape. */
export const torisphericalShape = (
  inputs: z.output<z.ZodObject<typeof torisphericalShapeFields>> & {
    readonly allowableStressPa: number;
    readonly jointEfficiency: number;
  },
) => ({
  crownRadius: inputs.crownRadiusM,
  knuckleRadius: inputs.knuckleRadiusM,
  outerDiameter: inputs.outerDiameterM,
  allowableStress: inputs.allowableStressPa,
  jointEfficiency: inputs.jointEfficiency,
});
