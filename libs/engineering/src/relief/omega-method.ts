/**
 * Omega method for homogeneous two-phase flow: pure functions.
 * @source api-520-1:2020 annex C; the explicit fit as read in polykin (042c653) flow/prv
 */

/** η_c = (1 + (1.0446 − 0.0093431 √ω) ω^(−0.56261))^(−0.70356 + 0.014685 ln ω) */
export const omegaCriticalRatioOf = (omega: number): number =>
  (1 + (1.0446 - 0.0093431 * Math.sqrt(omega)) * omega ** -0.56261) **
  (-0.70356 + 0.014685 * Math.log(omega));

/** Mass flux divided by √(p_0/v_0): choked where the back pressure ratio lies at or below η_c. */
export const omegaFlowFunctionOf = (omega: number, backPressureRatio: number): number => {
  const critical = omegaCriticalRatioOf(omega);
  if (backPressureRatio <= critical) return critical / Math.sqrt(omega);
  const r = backPressureRatio;
  return (
    Math.sqrt(Math.max(0, -2 * (omega * Math.log(r) + (omega - 1) * (1 - r)))) / (omega * (1 / r - 1) + 1)
  );
};
