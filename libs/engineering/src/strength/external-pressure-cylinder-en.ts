import { collapseRatio } from './collapse-curve.js';
import type { ExternalLimits } from './external-pressure-dished.js';

/** An unstiffened cylinder under pressure from outside [m, Pa]. */
export interface CylinderUnderExternalPressure {
  readonly outerDiameter: number;
  readonly thickness: number;
  /** Between stiff ends; 0.4 of the depth of a dished end counts with it. */
  readonly unsupportedLength: number;
  readonly elasticModulus: number;
  readonly elasticLimit: number;
  readonly safetyFactor: number;
}

export interface CylinderExternalLimits extends ExternalLimits {
  /** Number of lobes at which the elastic instability pressure is least. */
  readonly lobes: number;
  /** ε at that number [-]. */
  readonly strain: number;
}

const poisson = 0.3;

/**
 *   ε = 1/(n² − 1 + Z²/2) · ( 1/(n²/Z² + 1)² + e²/(12 R² (1 − ν²)) · (n² − 1 + Z²)² ),  Z = π R / L
 */
const strain = (n: number, Z: number, thicknessOverRadius: number): number => {
  const bending = (thicknessOverRadius ** 2 / (12 * (1 - poisson ** 2))) * (n * n - 1 + Z * Z) ** 2;
  return (1 / ((n * n) / (Z * Z) + 1) ** 2 + bending) / (n * n - 1 + (Z * Z) / 2);
};

/** ε falls with n to a single minimum, then rises. */
const leastStrain = (Z: number, thicknessOverRadius: number): { lobes: number; value: number } => {
  let best = { lobes: 2, value: strain(2, Z, thicknessOverRadius) };
  for (let n = 3; n <= 200; n += 1) {
    const value = strain(n, Z, thicknessOverRadius);
    if (value >= best.value) break;
    best = { lobes: n, value };
  }
  return best;
};

/**
 * Cylinder under external pressure, interstiffener collapse, circular within 0.5 %.
 *
 *   P_y = σ_e e / R    P_m = E e ε / R    P_r from the curve    P = P_r / S      R mean radius
 *
 * For a thick wall the yield pressure is that of the bore by Lamé, σ_e (D_e² − D_i²) / (2 D_e²), which is lower.
 *
 * @source en-13445-3:2021 §8.5.2, eq. 8.5.2-4 to 8.5.2-8; timoshenko-strength-2 §11
 */
export const cylinderUnderExternalPressure = (
  shell: CylinderUnderExternalPressure,
): CylinderExternalLimits => {
  const { outerDiameter: De, thickness: e, unsupportedLength: L, elasticModulus: E, elasticLimit } = shell;
  const R = (De - e) / 2;
  const { lobes, value } = leastStrain((Math.PI * R) / L, e / R);
  const innerOverOuter = 1 - (2 * e) / De;
  const yieldPressure = Math.min((elasticLimit * e) / R, (elasticLimit * (1 - innerOverOuter ** 2)) / 2);
  const elasticInstability = (E * e * value) / R;
  const lowerBoundCollapse = yieldPressure * collapseRatio('cylinder', elasticInstability / yieldPressure);
  return {
    lobes,
    strain: value,
    yieldPressure,
    elasticInstability,
    lowerBoundCollapse,
    allowable: lowerBoundCollapse / shell.safetyFactor,
  };
};
