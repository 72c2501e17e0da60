import { fail, succeed } from '@flangewise/model';
import { isAtMost, type WallBranch, type WallRule } from './wall-rule.js';

const thin: WallBranch = {
  method: 'thin wall',
  clause: 'EN 13445-3 7.4.2',
  thicknessFromInner: 'P · D_i / (2 · f · z − P)',
  thicknessFromOuter: 'P · D_e / (2 · f · z + P)',
  pressure: '2 · f · z · e / (D_i + e)',
};

const thick: WallBranch = {
  method: 'thick wall',
  clause: 'Lamé, hoop stress at the bore at most f z',
  thicknessFromInner: 'D_i / 2 · (√((f · z + P) / (f · z − P)) − 1)',
  thicknessFromOuter: 'D_e / 2 · (1 − √((f · z − P) / (f · z + P)))',
  pressure: 'f · z · ((D_i + 2 · e)² − D_i²) / ((D_i + 2 · e)² + D_i²)',
  note: 'e / D_e is above 0.16, where EN 13445-3 7.4.2 ends: thick-wall method. Above P = f / 2 the bore yields at the first pressure test',
};

const noWall = 'at or above f z no wall is thick enough: take a stronger material or a lower pressure';

/** e / D_e up to which clause 7.4 holds. */
const thinLimit = 0.16;
const thinLoad = (thicknessOverOuter: number): number => (2 * thicknessOverOuter) / (1 - thicknessOverOuter);
const thinLoadLimit = thinLoad(thinLimit);

/**
 * Cylinder under internal pressure by EN 13445-3, and by Lamé where the standard's formula ends.
 *
 * At e / D_e = 0.16 the thin formula allows 0.381 f z and Lamé 0.368 f z. A thicker wall is never weaker, so
 * the thin value stands until Lamé passes it.
 *
 * The Lamé criterion keeps P ≤ f z tanh(ln k), below the limit load f z ln k of a perfectly plastic wall.
 *
 * @source en-13445-3:2021 §7.4.2; timoshenko-strength-2 §11
 */
export const en13445Cylinder: WallRule = {
  diameterRatio: (q) => {
    if (isAtMost(q, thinLoadLimit)) return succeed({ value: (2 + q) / (2 - q), branch: thin });
    if (q >= 1) {
      return fail({ highest: 1, advice: noWall });
    }
    return succeed({ value: Math.sqrt((1 + q) / (1 - q)), branch: thick });
  },
  loadRatio: (k) => {
    const thicknessOverOuter = (1 - 1 / k) / 2;
    if (isAtMost(thicknessOverOuter, thinLimit)) {
      return succeed({ value: thinLoad(thicknessOverOuter), branch: thin });
    }
    const lame = 1 - 2 / (k * k + 1);
    return lame > thinLoadLimit
      ? succeed({ value: lame, branch: thick })
      : succeed({
          value: thinLoadLimit,
          branch: {
            ...thin,
            pressure: '2 · f · z · 0.16 / (1 − 0.16)',
            note: 'held at the end of clause 7.4.2, e / D_e = 0.16',
          },
        });
  },
};
