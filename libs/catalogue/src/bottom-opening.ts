import { evaluate, openingPressure } from '@flangewise/engineering';
import { type Outcome, succeed } from '@flangewise/model';
import type { PressureWall } from './pressure-wall.js';

/** Inner radius of the crown over the outer diameter of a dished end; a hemisphere goes by its inner diameter. */
const crownOverDiameter = {
  'torispherical DIN 28011': 1,
  'torispherical DIN 28013': 0.8,
} as const;

const crownRadiusM = ({ form, innerDiameterM, endThicknessM }: PressureWall): number | undefined => {
  switch (form) {
    case 'hemispherical':
      return innerDiameterM / 2;
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013':
      return crownOverDiameter[form] * (innerDiameterM + 2 * endThicknessM);
    case '2:1 ellipsoidal':
      return 0.9 * innerDiameterM;
    case 'flat':
      return undefined;
  }
};

export interface BottomOpening {
  /** Free diameter of the port [m]. */
  readonly portM: number;
  /** Wall of the forged branch that is set into the end [m]. */
  readonly branchThicknessM: number;
  readonly allowableStressPa: number;
}

/**
 * Permissible pressure of the end of a vessel at its bottom port, corroded [Pa]; Infinity for a flat end, which
 * has no port in this range.
 *
 * @error as strength.openingPressure
 */
export const bottomOpeningPressurePa = (wall: PressureWall, opening: BottomOpening): Outcome<number> => {
  const radius = crownRadiusM(wall);
  if (radius === undefined) return succeed(Infinity);
  const c = wall.corrosionAllowanceM;
  const rated = evaluate(openingPressure, {
    shape: 'sphere',
    innerRadiusM: radius + c,
    thicknessM: wall.endThicknessM - c,
    branchOuterDiameterM: opening.portM + 2 * opening.branchThicknessM,
    branchThicknessM: opening.branchThicknessM - c,
    allowableStressPa: opening.allowableStressPa,
  });
  return rated.ok ? succeed(rated.value.pressurePaGauge) : rated;
};
