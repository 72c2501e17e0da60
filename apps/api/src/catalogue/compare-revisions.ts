import type { CatalogueDifference } from '@flangewise/catalogue/exchange';
import type { CatalogueDesk } from '../trpc/context.js';
import { loadCatalogue } from './load-catalogue.js';
import { findTouchedOffers, type TouchedOffer } from './touched-offers.js';

export interface Comparison extends CatalogueDifference {
  readonly touchedOffers: readonly TouchedOffer[];
}

/** What one revision has otherwise than another, and which open offers that touches. */
export async function compareRevisions(
  { database, workshops }: Omit<CatalogueDesk, 'person'>,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<Comparison> {
  const [before, over] = [await loadCatalogue(database, from), await loadCatalogue(database, to)];
  const difference = await workshops.runJob('compare', { over, question: { before } });
  return { ...difference, touchedOffers: await findTouchedOffers(database, difference) };
}
