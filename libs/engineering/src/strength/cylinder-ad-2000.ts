import { fail, succeed } from '@flangewise/model';
import { isAtMost, type WallBranch, type WallRule } from './wall-rule.js';

const thin: WallBranch = {
  method: 'thin wall',
  clause: 'AD 2000 B1 eq. 2',
  thicknessFromInner: 'P · D_i / (2 · f · z − P)',
  thicknessFromOuter: 'P · D_e / (2 · f · z + P)',
  pressure: '2 · f · z · e / (D_i + e)',
};

const thick: WallBranch = {
  method: 'thick wall',
  clause: 'AD 2000 B10',
  thicknessFromInner: 'P · D_i / (2.3 · f · z − 3 · P)',
  thicknessFromOuter: 'P · D_e / (2.3 · f · z − P)',
  pressure: '2.3 · f · z · e / (D_i + 3 · e)',
  note: 'D_a / D_i is above 1.2: AD 2000 B10; its factor 2.3 is from memory, unverified',
};

/** D_a / D_i up to which B1 holds; 1.7 for tubes of D_a ≤ 200 mm (from memory, unverified). */
const thinLimit = 1.2;
const smallTubeLimit = 1.7;
const thickLimit = 1.5;

const thinLoad = (k: number): number => (2 * (k - 1)) / (k + 1);
const thickLoad = (k: number): number => (2.3 * (k - 1)) / (3 * k - 1);

const advice = 'AD 2000 B10 ends here, at D_a / D_i = 1.5: use EN 13445-3 with the thick-wall method';

/**
 * Cylinder under internal pressure by AD 2000: B1 for thin walls, B10 for D_a / D_i up to 1.5. The allowable
 * stress is K / S.
 *
 * @source ad-2000-b1 eq. 2; ad-2000-b10 (from memory, unverified)
 */
export const ad2000Cylinder: WallRule = {
  diameterRatio: (q, isSmallTube) => {
    if (q < 2) {
      const k = (2 + q) / (2 - q);
      if (isAtMost(k, isSmallTube(k) ? smallTubeLimit : thinLimit)) {
        return succeed({ value: k, branch: thin });
      }
    }
    const k = (2.3 - q) / (2.3 - 3 * q);
    return q < thickLoad(thickLimit) * (1 + 1e-12)
      ? succeed({ value: k, branch: thick })
      : fail({ highest: thickLoad(thickLimit), advice });
  },
  loadRatio: (k, isSmallTube) => {
    if (isAtMost(k, isSmallTube ? smallTubeLimit : thinLimit)) {
      return succeed({ value: thinLoad(k), branch: thin });
    }
    if (!isAtMost(k, thickLimit)) return fail({ highest: thickLimit, advice });
    const load = thickLoad(k);
    return load > thinLoad(thinLimit)
      ? succeed({ value: load, branch: thick })
      : succeed({
          value: thinLoad(thinLimit),
          branch: {
            ...thin,
            pressure: '2 · f · z · 0.2 / 2.2',
            note: 'held at the end of B1, D_a / D_i = 1.2',
          },
        });
  },
};
