import type { Catalogue } from '@flangewise/model';
import { refuse } from '../errors/refusal.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { loadCatalogue } from './load-catalogue.js';
import { unpackCatalogue } from './packed-catalogue.js';
import { findHeads, type RevisionHead } from './revision-head.js';

export interface FoundRevision extends RevisionHead {
  readonly catalogue: Catalogue;
}

/** One revision with all that it holds, as it is in one moment. */
export async function getRevision(
  { database }: Pick<CatalogueDesk, 'database'>,
  id: string,
): Promise<FoundRevision> {
  return database.$transaction(
    async (step) => {
      const [head] = await findHeads(step, { id });
      if (head === undefined)
        throw refuse('NOT_FOUND', { what: 'catalogue revision', field: 'id', given: id });
      return { ...head, catalogue: unpackCatalogue(await loadCatalogue(step, id)) };
    },
    { isolationLevel: 'RepeatableRead' },
  );
}
