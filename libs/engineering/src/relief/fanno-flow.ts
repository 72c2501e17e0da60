/**
 * Adiabatic flow of a perfect gas through a line with friction (Fanno), with the total resistance coefficient K in
 * the place of f L/d and the static state in front of the line. It tends to Darcy's Δp = K ρ w²/2 for small pressure
 * drops and to isothermal flow at k = 1.
 *
 *   k K M_1² = 1 − (M_1/M_2)² + (k+1)/2 M_1² ln( (M_1/M_2)² (1 + h M_2²)/(1 + h M_1²) ),  h = (k−1)/2
 *   p_2/p_1 = (M_1/M_2) √( (1 + h M_1²)/(1 + h M_2²) )
 *
 * @source fanno-flow
 */
interface LineState {
  readonly isentropicExponent: number;
  readonly totalResistance: number;
  /** Downstream by upstream static pressure. */
  readonly pressureRatio: number;
}

export interface LineFlow {
  /** Mach number where the line begins. */
  readonly inletMach: number;
  /** Pressure at the end of the line by that at its beginning; above `pressureRatio` where choked. */
  readonly exitRatio: number;
  readonly choked: boolean;
}

/** Halvings of the interval (0, 1); leaves an error below 1e-12 in the Mach number. */
const halvings = 44;

const bisect = (isTooFast: (mach: number) => boolean): number => {
  let low = 0;
  let high = 1;
  for (let step = 0; step < halvings; step += 1) {
    const middle = (low + high) / 2;
    if (isTooFast(middle)) high = middle;
    else low = middle;
  }
  return low;
};

interface Friction {
  readonly isentropicExponent: number;
  readonly totalResistance: number;
}

/** What the pressure drop leaves over for friction, times k M_1²: negative where M_1 is too fast. */
const frictionSurplus = (
  { isentropicExponent: k, totalResistance }: Friction,
  mach: number,
  exitMachSquared: number,
): number => {
  const h = (k - 1) / 2;
  const square = mach * mach;
  const ratio = square / exitMachSquared;
  return (
    1 -
    ratio +
    ((k + 1) / 2) * square * Math.log((ratio * (1 + h * exitMachSquared)) / (1 + h * square)) -
    k * totalResistance * square
  );
};

/** Mach number at the beginning of a line whose end has a given Mach number, at most 1. */
export const inletMachOf = (friction: Friction, exitMach: number): number =>
  exitMach *
  bisect((share) => share > 0 && frictionSurplus(friction, share * exitMach, exitMach * exitMach) < 0);

export const fannoFlow = ({ pressureRatio, ...friction }: LineState): LineFlow => {
  const h = (friction.isentropicExponent - 1) / 2;
  const chokedMach = inletMachOf(friction, 1);
  const chokedRatio = chokedMach * Math.sqrt((1 + h * chokedMach ** 2) / (1 + h));
  if (pressureRatio <= chokedRatio) return { inletMach: chokedMach, exitRatio: chokedRatio, choked: true };
  const exitMachSquaredOf = (mach: number): number => {
    const a = (mach / pressureRatio) ** 2 * (1 + h * mach * mach);
    return (2 * a) / (1 + Math.sqrt(1 + 4 * h * a));
  };
  const inletMach = bisect((mach) => {
    if (mach === 0) return false;
    const exitMachSquared = exitMachSquaredOf(mach);
    return exitMachSquared > 1 || frictionSurplus(friction, mach, exitMachSquared) < 0;
  });
  return { inletMach, exitRatio: pressureRatio, choked: false };
};
