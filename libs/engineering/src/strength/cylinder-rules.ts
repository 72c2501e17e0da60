import type { PressureCode } from './pressure-fields.js';
import { ad2000Cylinder } from './cylinder-ad-2000.js';
import { asmeCylinder } from './cylinder-asme-viii-1.js';
import { en13445Cylinder } from './cylinder-en-13445.js';
import type { WallRule } from './wall-rule.js';

/** The rule of each code for a cylinder under internal pressure. */
export const cylinderRules: Readonly<Record<PressureCode, WallRule>> = {
  'EN 13445-3': en13445Cylinder,
  'ASME VIII-1': asmeCylinder,
  'AD 2000': ad2000Cylinder,
};
