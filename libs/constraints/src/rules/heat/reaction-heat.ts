import type { Conditions } from '../../conditions.js';

/** Heat of reaction counts per mole of a gas: as it was said, or where gas is charged and nothing was said. */
export const isPerGas = ({
  heatOfReactionPer,
  gases,
}: Pick<Conditions, 'heatOfReactionPer' | 'gases'>): boolean =>
  heatOfReactionPer === undefined
    ? gases.length > 0
    : gases.some((gas) => gas.toLowerCase() === heatOfReactionPer.trim().toLowerCase());
