import { CatalogueAction, CatalogueState } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { changeDraft, type SeenDraft } from './change-draft.js';

/** Gives a draft up. Its items go; that it was, and who changed what in it, stays. */
export const discardDraft = (
  desk: Pick<CatalogueDesk, 'database' | 'person'>,
  seen: SeenDraft,
): Promise<number> =>
  changeDraft(desk, seen, async (step, { id: revisionId }) => {
    await step.catalogueItem.deleteMany({ where: { revisionId } });
    return { action: CatalogueAction.discarded, data: { state: CatalogueState.discarded } };
  });
