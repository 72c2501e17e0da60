/** A cooled coupling keeps its magnets near this temperature [K] (common practice). */
const cooledMagnetK = 333.15;
const ambientK = 293.15;

/** Heat reaches the magnets through lantern and shaft: half the way from ambient to the batch (common practice). */
export const magnetTemperatureK = (
  coupling: { readonly cooled: boolean },
  batchK: number | undefined,
): number => {
  const batch = batchK ?? ambientK;
  const warm = ambientK + (Math.max(batch, ambientK) - ambientK) / 2;
  return coupling.cooled ? Math.min(warm, cooledMagnetK) : warm;
};
