/** The next multiple of a step at or above a thickness; within rounding a multiple stays itself. */
export const roundUpTo = (thickness: number, step: number): number => {
  const steps = thickness / step;
  const nearest = Math.round(steps);
  return (Math.abs(steps - nearest) <= 1e-9 * Math.max(1, nearest) ? nearest : Math.ceil(steps)) * step;
};
