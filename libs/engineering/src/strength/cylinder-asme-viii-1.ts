import { fail, succeed } from '@flangewise/model';
import { isAtMost, type WallBranch, type WallRule } from './wall-rule.js';

const thin: WallBranch = {
  method: 'thin wall',
  clause: 'ASME VIII-1 UG-27(c)(1), appendix 1-1 from the outside',
  thicknessFromInner: 'P · D_i / 2 / (f · z − 0.6 · P)',
  thicknessFromOuter: 'P · D_e / 2 / (f · z + 0.4 · P)',
  pressure: 'f · z · e / (D_i / 2 + 0.6 · e)',
};

const thick: WallBranch = {
  method: 'thick wall',
  clause: 'ASME VIII-1 appendix 1-2 (editions from 2010)',
  thicknessFromInner: 'D_i / 2 · (exp(P / (f · z)) − 1)',
  thicknessFromOuter: 'D_e / 2 · (1 − exp(−P / (f · z)))',
  pressure: 'f · z · ln(1 + 2 · e / D_i)',
  note: 'the wall is above half of the inner radius, or P above 0.385 f z: appendix 1-2',
};

/** Held at half of the inner radius until appendix 1-2 asks for more, so that more pressure never asks for less wall. */
const held: WallBranch = {
  ...thick,
  thicknessFromInner: 'D_i / 4',
  thicknessFromOuter: 'D_e / 6',
  note: 'P is above 0.385 f z, and appendix 1-2 would allow less than half of the inner radius: half is taken',
};

/** Thickness over inner radius, and load ratio, up to which UG-27 holds. */
const thinRatioLimit = 1.5;
const thinLoadLimit = 0.385;
/** A wall of 19 times the inner radius; beyond, the answer has no use. */
const loadLimit = 3;

/**
 * Cylinder under internal pressure, circumferential stress.
 *
 * @source asme-viii-1 UG-27(c)(1), appendix 1-1(a)(1), appendix 1-2
 */
export const asmeCylinder: WallRule = {
  diameterRatio: (q) => {
    if (isAtMost(q, thinLoadLimit)) return succeed({ value: (1 + 0.4 * q) / (1 - 0.6 * q), branch: thin });
    if (q > loadLimit) {
      return fail({ highest: loadLimit, advice: 'take a stronger material or a lower pressure' });
    }
    const exact = Math.exp(q);
    return exact > thinRatioLimit
      ? succeed({ value: exact, branch: thick })
      : succeed({ value: thinRatioLimit, branch: held });
  },
  loadRatio: (k) =>
    succeed(
      isAtMost(k, thinRatioLimit)
        ? { value: (k - 1) / (1 + 0.6 * (k - 1)), branch: thin }
        : { value: Math.log(k), branch: thick },
    ),
};
