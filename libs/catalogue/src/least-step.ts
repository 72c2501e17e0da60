/** The first of rising values for which a test holds; undefined where none up to the last does. */
export const leastOf = (
  from: number,
  { step, most }: { readonly step: number; readonly most: number },
  holds: (value: number) => boolean,
): number | undefined => {
  const steps = Math.floor((most - from) / step + 1e-9);
  for (let k = 0; k <= steps; k++) {
    const value = Number((from + k * step).toFixed(6));
    if (holds(value)) return value;
  }
  return undefined;
};
