/** Cautions of a system without the general one, which stands on every sheet anyway. */
export const ownCautions = (cautions: readonly string[]): string[] =>
  cautions.filter((caution) => !/supports?, and do(es)? not replace/.test(caution));
