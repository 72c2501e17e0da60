/**
 * Isentropic flow of a perfect gas through an ideal nozzle: pure functions, SI.
 *
 *   r_c = (2/(k+1))^(k/(k−1))                         critical pressure ratio
 *   C   = √( k (2/(k+1))^((k+1)/(k−1)) )              choked flow function
 *   ψ   = √( k/(k−1) (r^(2/k) − r^((k+1)/k)) )        subsonic flow function
 *
 * Each keeps its limit at k = 1 (isothermal). Mass flux: C √(p_1 ρ_1) choked, ψ √(2 p_1 ρ_1) otherwise, and
 * C = √2 ψ(r_c), so the two join without a step.
 * @source api-520-1:2020; iso-4126-1 (closed forms)
 */
export const criticalPressureRatioOf = (k: number): number => {
  const excess = k - 1;
  // ln r_c = −k ln(1 + (k−1)/2)/(k−1), which tends to −1/2 at k = 1.
  return excess < 1e-9 ? Math.exp(-0.5) : Math.exp((-k * Math.log1p(excess / 2)) / excess);
};

export const chokedFlowFunctionOf = (k: number): number => {
  const excess = k - 1;
  return excess < 1e-9
    ? Math.exp(-0.5)
    : Math.sqrt(k * Math.exp((-(k + 1) * Math.log1p(excess / 2)) / excess));
};

/** @param r pressure ratio p_2/p_1, from r_c to 1 */
export const subsonicFlowFunctionOf = (k: number, r: number): number => {
  const excess = k - 1;
  const expansion = excess < 1e-9 ? -Math.log(r) : (-k * Math.expm1((excess / k) * Math.log(r))) / excess;
  return Math.sqrt(Math.max(0, r ** (2 / k) * expansion));
};

interface NozzleState {
  readonly pressurePaAbs: number;
  readonly backPressurePaAbs: number;
  readonly densityKgPerM3: number;
  readonly isentropicExponent: number;
}

/** Mass flux through an ideal nozzle [kg/(m²·s)], and whether the throat is choked. */
export const nozzleMassFlux = ({
  pressurePaAbs: p1,
  backPressurePaAbs: p2,
  densityKgPerM3: rho,
  isentropicExponent: k,
}: NozzleState): { readonly massFlux: number; readonly choked: boolean } => {
  const r = p2 / p1;
  return r <= criticalPressureRatioOf(k)
    ? { massFlux: chokedFlowFunctionOf(k) * Math.sqrt(p1 * rho), choked: true }
    : { massFlux: subsonicFlowFunctionOf(k, r) * Math.sqrt(2 * p1 * rho), choked: false };
};
