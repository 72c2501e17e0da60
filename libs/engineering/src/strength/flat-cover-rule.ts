/** Openings of a cover: one in the centre, and alike ones on a pitch circle [m]. */
export interface CoverOpenings {
  readonly central: number;
  readonly port: number;
  readonly portCount: number;
  readonly portCircle: number;
}

/** A flat cover, sealed on one circle and held on another [m, Pa]. */
export interface FlatCover {
  readonly thickness: number;
  /** Circle G on which the seal lies. */
  readonly sealDiameter: number;
  /** Circle C of bolts, clamp or segments. */
  readonly loadDiameter: number;
  /** Effective gasket width b and gasket factor m; 0 for a self-energising seal. */
  readonly gasketWidth: number;
  readonly gasketFactor: number;
  readonly allowableStress: number;
  readonly openings: CoverOpenings;
}

const poisson = 0.3;

/**
 * Share of the strength that openings without reinforcement leave: the least of (j − d)/j, with
 * j twice the distance from an opening to the seal circle, d its diameter, and for a pair of openings
 * j the distance of their centres, d the mean of their diameters. Below zero: openings overlap.
 *
 * EN 13445-3 10.6 raises the thickness by √(j / (j − d)), which is the same.
 *
 * @returns [-], at most 1
 * @source en-13445-3:2021 §10.6 (from memory, unverified)
 */
export const openingFactor = (openings: CoverOpenings, sealDiameter: number): number => {
  const { central, port, portCount, portCircle } = openings;
  let least = 1 - central / sealDiameter;
  if (portCount > 0 && port > 0) {
    least = Math.min(least, 1 - port / (sealDiameter - portCircle));
    if (central > 0) least = Math.min(least, 1 - (central + port) / portCircle);
    if (portCount > 1) least = Math.min(least, 1 - port / (portCircle * Math.sin(Math.PI / portCount)));
  }
  return least;
};

/**
 * Permissible pressure of a circular flat cover, simply supported on its load circle.
 *
 *   e = √( (3 (3 + ν)/32 G² + 3 (G/4 + 2 b m)(C − G)) P / f ),  ν = 0.3, raised by √(j / (j − d)) for openings
 *
 * @source en-13445-3:2021 §10.5.2.1 (operating condition, narrow-face gasket), §10.6
 */
export const flatCoverPressureOf = (cover: FlatCover): number => {
  const { thickness: e, sealDiameter: G, loadDiameter: C, allowableStress: f } = cover;
  return (f * e ** 2 * openingFactor(cover.openings, G)) / coverShape(cover, C - G);
};

/** 3 (3 + ν)/32 G² + 3 (G/4 + 2 b m)(C − G). */
export const coverShape = (
  {
    sealDiameter: G,
    gasketWidth: b,
    gasketFactor: m,
  }: Pick<FlatCover, 'sealDiameter' | 'gasketWidth' | 'gasketFactor'>,
  overhang: number,
): number => ((3 * (3 + poisson)) / 32) * G ** 2 + 3 * (G / 4 + 2 * b * m) * overhang;
