import { smallestEnough } from '../smallest-enough.js';

/**
 * The inner surface of a vessel end, a surface of revolution that stands on its lowest point. Heights count
 * from there to the tangent line. All in m, m², m³.
 */
export interface EndProfile {
  readonly height: number;
  readonly volume: number;
  readonly area: number;
  /** ∫ mean curvature dA [m]: with it a wall of thickness t has the volume A t + M t² + 2π/3 t³ (Steiner). */
  readonly meanCurvature: number;
  /** Volume up to a height between 0 and `height`. */
  volumeTo(height: number): number;
  /** Inner surface up to a height between 0 and `height`. */
  areaTo(height: number): number;
}

export interface Torisphere {
  readonly diameter: number;
  readonly crownRadius: number;
  readonly knuckleRadius: number;
}

/**
 * Crown of radius R, and a knuckle of radius r that runs into the cylinder.
 *
 *   c = D/2 − r   sin φ = c/(R − r)   H = R − √((R − r)² − c²)
 *
 * A hemisphere is R = r = D/2.
 */
export const torisphere = ({ diameter, crownRadius: R, knuckleRadius: r }: Torisphere): EndProfile => {
  const c = diameter / 2 - r;
  const centres = R - r;
  const cosine = centres > 0 ? Math.sqrt(Math.max(0, 1 - (c / centres) ** 2)) : 0;
  const height = R - centres * cosine;
  const crownHeight = R * (1 - cosine);
  const crownVolume = (z: number): number => Math.PI * z * z * (R - z / 3);
  // The knuckle in u, the distance below the tangent line.
  const highest = r * cosine;
  const primitive = (u: number): number =>
    c * c * u +
    c * (u * Math.sqrt(Math.max(0, r * r - u * u)) + r * r * Math.asin(Math.min(1, u / r))) +
    r * r * u -
    u ** 3 / 3;
  const angle = Math.asin(cosine);
  const throughCrown = crownVolume(crownHeight) + Math.PI * primitive(highest);
  const volumeTo = (z: number): number =>
    z <= crownHeight ? crownVolume(z) : throughCrown - Math.PI * primitive(height - z);
  const areaTo = (z: number): number => {
    if (z <= crownHeight) return 2 * Math.PI * R * z;
    const u = height - z;
    return (
      2 * Math.PI * R * crownHeight +
      2 * Math.PI * r * (c * (angle - Math.asin(Math.min(1, u / r))) + highest - u)
    );
  };
  return {
    height,
    volume: volumeTo(height),
    area: areaTo(height),
    meanCurvature: 2 * Math.PI * crownHeight + Math.PI * (c * angle + 2 * highest),
    volumeTo,
    areaTo,
  };
};

/** Half of an oblate ellipsoid: semi-axes D/2 and the height b < D/2. */
export const semiEllipsoid = (diameter: number, height: number): EndProfile => {
  const a = diameter / 2;
  const b = height;
  const k = (a * a - b * b) / b ** 4;
  const root = Math.sqrt(k);
  const primitive = (u: number): number => (u * Math.sqrt(1 + k * u * u) + Math.asinh(root * u) / root) / 2;
  const volumeTo = (z: number): number => Math.PI * ((a * a) / (b * b)) * z * z * (b - z / 3);
  const areaTo = (z: number): number => 2 * Math.PI * a * (primitive(b) - primitive(b - z));
  // ∫ H dA of a spheroid follows from its mean width; for half of it, with the rim taken horizontal.
  const eccentricity = Math.sqrt(1 - (b / a) ** 2);
  const meanCurvature = Math.PI * (b + (a * Math.asin(eccentricity)) / eccentricity);
  return { height, volume: volumeTo(b), area: areaTo(b), meanCurvature, volumeTo, areaTo };
};

/** A cone down to its point. */
export const cone = (diameter: number, halfAngleRad: number): EndProfile => {
  const slope = Math.tan(halfAngleRad);
  const height = diameter / 2 / slope;
  const volumeTo = (z: number): number => (Math.PI / 3) * slope ** 2 * z ** 3;
  const areaTo = (z: number): number => (Math.PI * slope * z * z) / Math.cos(halfAngleRad);
  return {
    height,
    volume: volumeTo(height),
    area: areaTo(height),
    meanCurvature: Math.PI * height,
    volumeTo,
    areaTo,
  };
};

export const flatDisc = (diameter: number): EndProfile => {
  const area = (Math.PI / 4) * diameter ** 2;
  return { height: 0, volume: 0, area, meanCurvature: 0, volumeTo: () => 0, areaTo: () => area };
};

/** Height up to which a volume fills the end; the volume is between 0 and that of the end. */
export const heightOfVolume = (end: EndProfile, volume: number): number =>
  smallestEnough({
    low: 0,
    high: end.height,
    // A picometre in a metre: far below what any level means.
    tolerance: end.height * 1e-12,
    isEnough: (z) => end.volumeTo(z) >= volume,
  });

/** Volume of a wall of even thickness outside the surface. */
export const wallVolume = (end: EndProfile, thickness: number): number =>
  end.area * thickness + end.meanCurvature * thickness ** 2 + (2 * Math.PI * thickness ** 3) / 3;
