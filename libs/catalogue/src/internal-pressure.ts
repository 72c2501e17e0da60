import { designStressAt, evaluate, glassVessel, vesselRating } from '@flangewise/engineering';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { preferredBelow } from './preferred-pressure.js';
import { pressureWallOf } from './pressure-wall.js';
import { standardEnds } from './range.js';
import type { VesselDesign } from './vessel-design.js';

const glassBar = ({ geometry }: VesselDesign): Outcome<number> => {
  const rated = evaluate(glassVessel, {
    innerDiameterM: geometry.innerDiameterM,
    thicknessM: Math.min(geometry.wallThicknessM, geometry.endThicknessM),
  });
  return rated.ok ? succeed(rated.value.pressureBarGauge) : rated;
};

const wallPa = (design: VesselDesign): Outcome<number> => {
  const { material, temperatureK, ...wall } = pressureWallOf(design);
  const stress = designStressAt(material, temperatureK);
  if (!stress.ok) return stress;
  const { cylinderLengthM: _, ...walls } = wall;
  const rated = evaluate(vesselRating, {
    code: 'EN 13445-3',
    ...walls,
    allowableStressPa: stress.value.stressPa,
  });
  return rated.ok ? succeed(rated.value.pressurePaGauge) : rated;
};

/**
 * Computed permissible pressure of the body of a vessel at its highest temperature [Pa]: shell and end by
 * EN 13445-3, a lined vessel by its carrier, glass by the glass rules.
 *
 * @error as designStressAt for a material without design data, and as vesselRating, glassVessel
 */
export const permissiblePressurePa = (design: VesselDesign): Outcome<number> => {
  if (design.construction !== 'glass') return wallPa(design);
  const bar = glassBar(design);
  return bar.ok ? succeed(bar.value * 1e5) : bar;
};

/**
 * PS of a vessel in bar: metal and lined at a preferred pressure, glass at whole bar, never above the range.
 *
 * @error CALC_OUT_OF_RANGE for a wall too thin for the lowest pressure
 */
export const ratedPressureBar = (design: VesselDesign): Outcome<number> => {
  const carried = permissiblePressurePa(design);
  if (!carried.ok) return carried;
  const bar =
    design.construction === 'glass'
      ? Math.floor(carried.value / 1e5)
      : preferredBelow(carried.value, standardEnds.maxPressurePaGauge / 1e5);
  return bar === undefined || bar < 1
    ? fail({
        code: 'CALC_OUT_OF_RANGE',
        message: `${design.id} carries ${(carried.value / 1e5).toFixed(2)} bar, less than the lowest pressure of the range; make the wall thicker`,
        field: 'geometry.wallThicknessM',
        given: design.geometry.wallThicknessM,
      })
    : succeed(bar);
};
