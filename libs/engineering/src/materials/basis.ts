import { z } from 'zod';
import type { Basis } from '@flangewise/model';

/** How far a row of data can be trusted, as it stands in the data files. */
export const basisSchema = z.enum(['published', 'common practice', 'from memory, unverified']);

const weight: Readonly<Record<Basis, number>> = {
  published: 0,
  'common practice': 1,
  'from memory, unverified': 2,
};

/** A result is worth as much as the weakest row that it rests on. */
export const weakestBasis = (bases: readonly Basis[]): Basis =>
  bases.reduce<Basis>((weakest, basis) => (weight[basis] > weight[weakest] ? basis : weakest), 'published');
