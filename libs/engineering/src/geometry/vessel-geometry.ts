import { type EndForm, endProfile, type EndSize } from './end-form.js';
import { type EndProfile, heightOfVolume, wallVolume } from './end-profile.js';

/** An upright vessel: cylinder, end below, open or flanged above [m]. */
export interface VesselSize {
  readonly innerDiameter: number;
  readonly cylinderLength: number;
  readonly wallThickness: number;
  readonly endThickness: number;
  readonly form: EndForm;
  readonly coneHalfAngleRad: number;
}

export interface VesselGeometry {
  readonly end: EndProfile;
  readonly outerDiameter: number;
  readonly volume: number;
  readonly depth: number;
  readonly shellVolume: number;
  readonly endWallVolume: number;
}

/** The end of the vessel as its own formulas take it. */
export const endSizeOf = (size: VesselSize): EndSize => ({
  form: size.form,
  diameter: size.innerDiameter,
  nominalDiameter: size.innerDiameter + 2 * size.endThickness,
  coneHalfAngleRad: size.coneHalfAngleRad,
});

/** The end's radii come from its own outer diameter, inner diameter plus twice its wall. */
export const vesselGeometry = (size: VesselSize): VesselGeometry => {
  const { innerDiameter: Di, wallThickness: e, endThickness } = size;
  const end = endProfile(endSizeOf(size));
  const outerDiameter = Di + 2 * e;
  const crossSection = (Math.PI / 4) * Di ** 2;
  return {
    end,
    outerDiameter,
    volume: end.volume + crossSection * size.cylinderLength,
    depth: end.height + size.cylinderLength,
    shellVolume: (Math.PI / 4) * (outerDiameter ** 2 - Di ** 2) * size.cylinderLength,
    endWallVolume:
      size.form === 'flat'
        ? (Math.PI / 4) * outerDiameter ** 2 * endThickness
        : wallVolume(end, endThickness),
  };
};

export interface Fill {
  /** Height of the liquid above the lowest point [m]. */
  readonly depth: number;
  /** Wetted inner surface, end and cylinder [m²]. */
  readonly wettedArea: number;
  /** Wetted inner surface of the cylinder alone [m²]. */
  readonly wettedCylinderArea: number;
}

/** Inner surface up to a height above the lowest point, at most to the rim [m²]. */
export const areaUpTo = (size: VesselSize, { end, depth }: VesselGeometry, height: number): number => {
  const level = Math.min(height, depth);
  return level < end.height
    ? end.areaTo(level)
    : end.area + Math.PI * size.innerDiameter * (level - end.height);
};

/** The vessel at rest with a volume of liquid, from zero to the whole volume. */
export const fillOf = (size: VesselSize, { end }: VesselGeometry, volume: number): Fill => {
  if (volume < end.volume) {
    const depth = heightOfVolume(end, volume);
    return { depth, wettedArea: end.areaTo(depth), wettedCylinderArea: 0 };
  }
  const above = (volume - end.volume) / ((Math.PI / 4) * size.innerDiameter ** 2);
  const wettedCylinderArea = Math.PI * size.innerDiameter * above;
  return { depth: end.height + above, wettedArea: end.area + wettedCylinderArea, wettedCylinderArea };
};
