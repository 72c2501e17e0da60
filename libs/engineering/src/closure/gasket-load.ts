/** A ring gasket between two faces [m, Pa]. */
export interface RingGasket {
  readonly outerDiameter: number;
  readonly innerDiameter: number;
  readonly gasketFactor: number;
  readonly seatingStress: number;
}

export interface GasketLoad {
  /** Basic gasket seating width b_0 [m]. */
  readonly basicWidth: number;
  /** Effective gasket seating width b [m]. */
  readonly effectiveWidth: number;
  /** Diameter of the gasket load reaction G [m]. */
  readonly reactionDiameter: number;
  /** Bolt load to seat the gasket W_m2 [N]. */
  readonly seating: number;
  /** Hydrostatic end force H [N]. */
  readonly endForce: number;
  /** Gasket load in operation H_p [N]. */
  readonly gasketForce: number;
  /** Bolt load in operation W_m1 = H + H_p [N]. */
  readonly operating: number;
}

/** Basic width at which the rule changes [m]. */
const quarterInch = 0.00635;

/**
 * Load of the bolts on a ring gasket of rectangular section, facing sketch 1a.
 *
 *   N = (D_o − D_i)/2   b_0 = N/2
 *   b_0 ≤ 6.35 mm: b = b_0,          G = (D_o + D_i)/2
 *   b_0 > 6.35 mm: b = √(6.35 mm b_0), G = D_o − 2 b
 *   W_m2 = π b G y   W_m1 = π/4 G² P + 2 b π G m P
 *
 * √(6.35 mm b_0) is the rule's ½ √b_0 with lengths in inches: both give b_0 at ¼ in.
 *
 * @source asme-viii-1 appendix 2-5, table 2-5.2
 */
export const gasketLoad = (gasket: RingGasket, pressure: number): GasketLoad => {
  const { outerDiameter: Do, innerDiameter: Di } = gasket;
  const basicWidth = (Do - Di) / 4;
  const isNarrow = basicWidth <= quarterInch;
  const effectiveWidth = isNarrow ? basicWidth : Math.sqrt(quarterInch * basicWidth);
  const reactionDiameter = isNarrow ? (Do + Di) / 2 : Do - 2 * effectiveWidth;
  const endForce = (Math.PI / 4) * reactionDiameter ** 2 * pressure;
  const gasketForce = 2 * effectiveWidth * Math.PI * reactionDiameter * gasket.gasketFactor * pressure;
  return {
    basicWidth,
    effectiveWidth,
    reactionDiameter,
    seating: Math.PI * effectiveWidth * reactionDiameter * gasket.seatingStress,
    endForce,
    gasketForce,
    operating: endForce + gasketForce,
  };
};
