import type { PriceList } from '@flangewise/model';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import { CatalogueAction } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { missedText, surroundingsOf } from './check-draft.js';
import { changeDraft, type ChangedDraft, type SeenDraft } from './change-draft.js';
import type { MissedItem } from './find-missed-items.js';

const without = (list: PriceList, id: string): PriceList => {
  const { [id]: _, ...prices } = list.prices;
  return { ...list, prices };
};

/** Takes an item out of a draft, with its prices. */
export async function removeItem(
  desk: Pick<CatalogueDesk, 'database' | 'person'>,
  { itemId: id, ...seen }: SeenDraft & { readonly itemId: string },
): Promise<ChangedDraft> {
  let missed: MissedItem | undefined;
  const version = await changeDraft(desk, seen, async (step, draft) => {
    const { id: revisionId, priceLists } = draft;
    const where = { revisionId_id: { revisionId, id } };
    const before = await step.catalogueItem.findUnique({ where });
    if (before === null)
      throw refuse('NOT_FOUND', { what: 'item of this draft', field: 'itemId', given: id });
    await step.catalogueItem.delete({ where });
    const { missedItems } = await surroundingsOf(step, draft);
    missed = missedItems.find(({ item }) => item === id);
    const lists = priceLists as unknown as readonly PriceList[];
    return {
      action: CatalogueAction.item_removed,
      subject: id,
      before: before.document as object,
      data: { priceLists: storable(lists.map((list) => without(list, id))) },
    };
  });
  return {
    version,
    troubles: missed === undefined ? [] : [{ path: id, given: 'taken out', message: missedText(missed) }],
  };
}
