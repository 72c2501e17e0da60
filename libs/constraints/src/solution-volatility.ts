import { findSubstanceHazards } from '@flangewise/engineering';
import type { ConditionMedium } from './conditions.js';

/**
 * Solutes whose solution gives off no more than water would, up to a mass fraction: acids up to their azeotrope at 1 atm
 * (from memory, unverified), salts and bases at any.
 */
const belowWater: readonly { readonly name: string; readonly cas: string; readonly upTo: number }[] = [
  { name: 'hydrochloric acid', cas: '7647-01-0', upTo: 0.202 },
  { name: 'hydrogen chloride', cas: '7647-01-0', upTo: 0.202 },
  { name: 'nitric acid', cas: '7697-37-2', upTo: 0.68 },
  { name: 'formic acid', cas: '64-18-6', upTo: 0.775 },
  { name: 'acetic acid', cas: '64-19-7', upTo: 1 },
  { name: 'sulfuric acid', cas: '7664-93-9', upTo: 1 },
  { name: 'sodium chloride', cas: '7647-14-5', upTo: 1 },
];

export type Volatility =
  /** Water is the upper bound. */
  | 'below water'
  /** What water and the pure substance give off together is the upper bound, whether they mix or not. */
  | 'below the sum'
  /** A dissolved gas, or an acid beyond its azeotrope: no bound is on file. */
  | 'unknown';

/** What bounds the vapour pressure of an aqueous solution. */
export const volatilityOf = ({ name, cas, massFraction = 1 }: ConditionMedium): Volatility => {
  const acid = belowWater.find((row) => row.name === name.toLowerCase() || row.cas === cas);
  if (acid !== undefined) return massFraction <= acid.upTo ? 'below water' : 'unknown';
  const hazards = findSubstanceHazards(cas ?? name);
  if (hazards.ok && hazards.value.lessVolatileThan === 'water') return 'below water';
  return hazards.ok && hazards.value.state === 'gas' ? 'unknown' : 'below the sum';
};
