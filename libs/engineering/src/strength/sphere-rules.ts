import { fail, succeed } from '@flangewise/model';
import { fromMemory, published } from '../source-reference.js';
import type { PressureCode } from './pressure-fields.js';
import { isAtMost, type WallBranch, type WallRule } from './wall-rule.js';

const enThin: WallBranch = {
  method: 'thin wall',
  clause: 'EN 13445-3 7.4.3',
  thicknessFromInner: 'P · D_i / (4 · f · z − P)',
  thicknessFromOuter: 'P · D_e / (4 · f · z + P)',
  pressure: '4 · f · z · e / (D_i + e)',
};

const enThick: WallBranch = {
  method: 'thick wall',
  clause: 'Lamé hoop stress at the bore at most f z, and at most the limit load 2 f z ln(D_e / D_i)',
  thicknessFromInner: 'D_i / 2 · (max(exp(P / (2 · f · z)), ∛((f · z + P) / (f · z − P / 2))) − 1)',
  thicknessFromOuter: 'D_e / 2 · (1 − 1 / max(exp(P / (2 · f · z)), ∛((f · z + P) / (f · z − P / 2))))',
  pressure:
    'min(2 · f · z · ln(1 + 2 · e / D_i), 2 · f · z · ((D_i + 2 · e)³ − D_i³) / ((D_i + 2 · e)³ + 2 · D_i³))',
  note: 'e / D_e is above 0.16, where EN 13445-3 7.4.3 ends: thick-wall method',
};

const thinRatioLimit = 1 / (1 - 2 * 0.16);
const thinLoadLimit = (4 * 0.16) / (1 - 0.16);

const advice = 'take a stronger material or a lower pressure';

/** @source en-13445-3:2021 §7.4.3; timoshenko-theory-of-elasticity-3 §136 */
const en: WallRule = {
  diameterRatio: (q) => {
    if (isAtMost(q, thinLoadLimit)) return succeed({ value: (4 + q) / (4 - q), branch: enThin });
    if (q >= 2) return fail({ highest: 2, advice });
    const k = Math.max(Math.exp(q / 2), Math.cbrt((1 + q) / (1 - q / 2)), thinRatioLimit);
    return succeed({ value: k, branch: enThick });
  },
  loadRatio: (k) => {
    const y = (1 - 1 / k) / 2;
    if (isAtMost(k, thinRatioLimit)) return succeed({ value: (4 * y) / (1 - y), branch: enThin });
    const lame = 2 - 6 / (k ** 3 + 2);
    return succeed({ value: Math.min(2 * Math.log(k), lame), branch: enThick });
  },
};

const asmeThin: WallBranch = {
  method: 'thin wall',
  clause: 'ASME VIII-1 UG-27(d)',
  thicknessFromInner: 'P · D_i / 2 / (2 · f · z − 0.2 · P)',
  thicknessFromOuter: 'P · D_e / 2 / (2 · f · z + 0.8 · P)',
  pressure: '2 · f · z · e / (D_i / 2 + 0.2 · e)',
};

const asmeThick: WallBranch = {
  method: 'thick wall',
  clause: 'ASME VIII-1 appendix 1-3 (editions from 2010)',
  thicknessFromInner: 'D_i / 2 · (exp(P / (2 · f · z)) − 1)',
  thicknessFromOuter: 'D_e / 2 · (1 − exp(−P / (2 · f · z)))',
  pressure: '2 · f · z · ln(1 + 2 · e / D_i)',
  note: 'the wall is above 0.356 of the inner radius, or P above 0.665 f z; at least 0.356 of the radius is taken',
};

/** UG-27(d): t ≤ 0.356 R or P ≤ 0.665 S E. */
const asmeRatioLimit = 1.356;
const asmeLoadLimit = 0.665;

/** @source asme-viii-1 UG-27(d), appendix 1-3 */
const asme: WallRule = {
  diameterRatio: (q) => {
    if (isAtMost(q, asmeLoadLimit)) return succeed({ value: 1 + q / (2 - 0.2 * q), branch: asmeThin });
    if (q > 6) return fail({ highest: 6, advice });
    return succeed({ value: Math.max(Math.exp(q / 2), asmeRatioLimit), branch: asmeThick });
  },
  loadRatio: (k) =>
    succeed(
      isAtMost(k, asmeRatioLimit)
        ? { value: (2 * (k - 1)) / (1 + 0.2 * (k - 1)), branch: asmeThin }
        : { value: 2 * Math.log(k), branch: asmeThick },
    ),
};

const adThin: WallBranch = { ...enThin, clause: 'AD 2000 B1 eq. 3' };
const adRatioLimit = 1.2;
const adLoadLimit = (4 * (adRatioLimit - 1)) / (adRatioLimit + 1);
const adAdvice = 'AD 2000 B1 ends here, at D_a / D_i = 1.2: use EN 13445-3 with the thick-wall method';

/** @source ad-2000-b1 eq. 3 */
const ad: WallRule = {
  diameterRatio: (q) => {
    const k = (4 + q) / (4 - q);
    return q < 4 && isAtMost(k, adRatioLimit)
      ? succeed({ value: k, branch: adThin })
      : fail({ highest: adLoadLimit, advice: adAdvice });
  },
  loadRatio: (k) =>
    isAtMost(k, adRatioLimit)
      ? succeed({ value: (4 * (k - 1)) / (k + 1), branch: adThin })
      : fail({ highest: adRatioLimit, advice: adAdvice }),
};

/** The rule of each code for a sphere or a hemispherical end under internal pressure. */
export const sphereRules: Readonly<Record<PressureCode, WallRule>> = {
  'EN 13445-3': en,
  'ASME VIII-1': asme,
  'AD 2000': ad,
};

export const sphereSources = [
  published('en-13445-3:2021 §7.4.3'),
  published('timoshenko-theory-of-elasticity-3 §136'),
  published('asme-viii-1 UG-27(d), appendix 1-3'),
  fromMemory('ad-2000-b1 eq. 3'),
] as const;

export const sphereRange =
  'EN 13445-3: e/De ≤ 0.16, above it Lamé and limit load with P < 2 f z; ASME VIII-1: P ≤ 6 S E; AD 2000: Da/Di ≤ 1.2';
