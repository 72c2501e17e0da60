/** A cone below a cylinder, without knuckle, corroded [m, Pa]. */
export interface ConicalEnd {
  readonly thickness: number;
  readonly innerDiameter: number;
  readonly cylinderThickness: number;
  /** Half of the opening angle, at most 60°. */
  readonly halfAngleRad: number;
  readonly allowableStress: number;
  readonly jointEfficiency: number;
}

/**
 * Permissible pressure of a conical end: the lower of the cone itself and of its junction with the cylinder.
 *
 *   P_c = 2 f z e cos α / (D_i + e cos α)
 *   P_j = 2 f e_j / (D_c β),  β = ⅓ √(D_c/e_j) tan α / (1 + 1/√cos α) − 0.15
 *
 * e_j is the thinner of cone and cylinder, D_c the mean diameter of the cylinder.
 *
 * @source en-13445-3:2021 §7.6.4, §7.6.6 (from memory, unverified)
 */
export const conicalEndPressure = (end: ConicalEnd): number => {
  const { thickness: e, innerDiameter: Di, halfAngleRad, allowableStress: f, jointEfficiency: z } = end;
  const cosine = Math.cos(halfAngleRad);
  const ofCone = (2 * f * z * e * cosine) / (Di + e * cosine);
  const atJunction = Math.min(e, end.cylinderThickness);
  const meanDiameter = Di + end.cylinderThickness;
  const beta =
    (Math.sqrt(meanDiameter / atJunction) * Math.tan(halfAngleRad)) / (3 * (1 + 1 / Math.sqrt(cosine))) -
    0.15;
  return beta > 0 ? Math.min(ofCone, (2 * f * atJunction) / (meanDiameter * beta)) : ofCone;
};
