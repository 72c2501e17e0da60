import { designStressAt, evaluate, glassVessel, vesselRating } from '@flangewise/engineering';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { bottomOpeningPressurePa } from './bottom-opening.js';
import { preferredBelow } from './preferred-pressure.js';
import { type PressureWall, pressureWallOf } from './pressure-wall.js';
import { families, standardEnds } from './range.js';
import type { VesselDesign } from './vessel-design.js';

const glassBar = ({ geometry }: VesselDesign): Outcome<number> => {
  const rated = evaluate(glassVessel, {
    innerDiameterM: geometry.innerDiameterM,
    thicknessM: Math.min(geometry.wallThicknessM, geometry.endThicknessM),
  });
  return rated.ok ? succeed(rated.value.pressureBarGauge) : rated;
};

const shellAndEndPa = (wall: PressureWall, allowableStressPa: number): Outcome<number> => {
  const rated = evaluate(vesselRating, {
    code: 'EN 13445-3',
    innerDiameterM: wall.innerDiameterM,
    wallThicknessM: wall.wallThicknessM,
    endThicknessM: wall.endThicknessM,
    form: wall.form,
    corrosionAllowanceM: wall.corrosionAllowanceM,
    allowableStressPa,
  });
  return rated.ok ? succeed(rated.value.pressurePaGauge) : rated;
};

const wallPa = (design: VesselDesign): Outcome<number> => {
  const wall = pressureWallOf(design);
  const stress = designStressAt(wall.material, wall.temperatureK);
  if (!stress.ok) return stress;
  const allowableStressPa = stress.value.stressPa;
  const body = shellAndEndPa(wall, allowableStressPa);
  if (!body.ok || design.bottomPortM === null) return body;
  const port = bottomOpeningPressurePa(wall, {
    portM: design.bottomPortM + 2 * (design.liningThicknessM ?? 0),
    branchThicknessM: design.bottomBranchThicknessM ?? 0,
    allowableStressPa,
  });
  return port.ok ? succeed(Math.min(body.value, port.value)) : port;
};

/**
 * Computed permissible pressure of the body of a vessel at its highest temperature [Pa]: shell, end and
 * bottom port by EN 13445-3, a lined vessel by its carrier, glass by the glass rules.
 *
 * @error as designStressAt for a material without design data, and as vesselRating, glassVessel
 */
export const permissiblePressurePa = (design: VesselDesign): Outcome<number> => {
  if (design.construction !== 'glass') return wallPa(design);
  const bar = glassBar(design);
  return bar.ok ? succeed(bar.value * 1e5) : bar;
};

/** End of the family, or of the standard range for a family of another maker [bar]. */
const endOfFamilyBar = (family: string): number =>
  families.find(({ name }) => name === family)?.maxPressureBarGauge ?? standardEnds.maxPressurePaGauge / 1e5;

/**
 * PS of a vessel in bar: metal and lined at a preferred pressure up to the end of the family, glass at whole bar.
 *
 * @error CALC_OUT_OF_RANGE for a wall too thin for the lowest pressure
 */
export const ratedPressureBar = (design: VesselDesign): Outcome<number> => {
  const carried = permissiblePressurePa(design);
  if (!carried.ok) return carried;
  const bar =
    design.construction === 'glass'
      ? Math.floor(carried.value / 1e5)
      : preferredBelow(carried.value, endOfFamilyBar(design.family));
  return bar === undefined || bar < 1
    ? fail({
        code: 'CALC_OUT_OF_RANGE',
        message: `${design.id} carries ${(carried.value / 1e5).toFixed(2)} bar, less than the lowest pressure of the range; make the wall thicker`,
        field: 'geometry.wallThicknessM',
        given: design.geometry.wallThicknessM,
      })
    : succeed(bar);
};
