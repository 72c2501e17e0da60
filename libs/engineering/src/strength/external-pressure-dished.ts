import { collapseRatio } from './collapse-curve.js';

/** A spherical shell or the crown of a dished end under pressure from outside [m, Pa]. */
export interface SphericalShell {
  readonly radius: number;
  readonly thickness: number;
  readonly elasticModulus: number;
  readonly elasticLimit: number;
  readonly safetyFactor: number;
}

export interface ExternalLimits {
  readonly yieldPressure: number;
  readonly elasticInstability: number;
  readonly lowerBoundCollapse: number;
  readonly allowable: number;
}

/**
 * Sphere under external pressure.
 *
 *   P_y = 2 σ_e e / R    P_m = 1.21 E e² / R²    P_r from the curve    P = P_r / S
 *
 * @source en-13445-3:2021 §8.7
 */
export const sphereUnderExternalPressure = (shell: SphericalShell): ExternalLimits => {
  const { radius: R, thickness: e, elasticModulus: E, elasticLimit, safetyFactor } = shell;
  const yieldPressure = (2 * elasticLimit * e) / R;
  const elasticInstability = 1.21 * E * (e / R) ** 2;
  const lowerBoundCollapse = yieldPressure * collapseRatio('dishedEnd', elasticInstability / yieldPressure);
  return {
    yieldPressure,
    elasticInstability,
    lowerBoundCollapse,
    allowable: lowerBoundCollapse / safetyFactor,
  };
};
