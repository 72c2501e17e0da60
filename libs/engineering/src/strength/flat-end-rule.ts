import { published, fromMemory } from '../source-reference.js';
import type { PressureCode } from './pressure-fields.js';

/**
 * How a code counts the attachment of an unstayed flat end.
 *
 *   ASME VIII-1 UG-34:  t = d √(C P / (S E))
 *   EN 13445-3 10.4:    e = C_1 D_eq √(P / f)
 *   AD 2000 B5:         s = C D_1 √(p / (K/S v))
 *
 * ASME's factor stands under the root, those of EN 13445-3 and AD 2000 before it.
 */
export const flatEndLoadFactor = (code: PressureCode, attachmentFactor: number): number =>
  code === 'ASME VIII-1' ? attachmentFactor : attachmentFactor ** 2;

export const flatEndFormula: Readonly<
  Record<PressureCode, { thickness: string; pressure: string; clause: string }>
> = {
  'ASME VIII-1': {
    thickness: 'd · √(C · P / (f · z))',
    pressure: 'f · z · (e / d)² / C',
    clause: 'ASME VIII-1 UG-34(c)(2)',
  },
  'EN 13445-3': {
    thickness: 'C · d · √(P / (f · z))',
    pressure: 'f · z · (e / (C · d))²',
    clause: 'EN 13445-3 10.4; the clause has no joint coefficient, 1 is meant',
  },
  'AD 2000': {
    thickness: 'C · d · √(P / (f · z))',
    pressure: 'f · z · (e / (C · d))²',
    clause: 'AD 2000 B5',
  },
};

export const flatEndSources = [
  published('asme-viii-1 UG-34(c)(2)'),
  fromMemory('en-13445-3:2021 §10.4'),
  fromMemory('ad-2000-b5'),
] as const;

export const flatEndRange =
  'circular, unstayed, without openings; attachment factor from 0.05 to 1.3; thickness at most the diameter';
