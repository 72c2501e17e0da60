import { isDeepStrictEqual } from 'node:util';
import { type ItemInput, itemSchema } from '@flangewise/model';
import { storable } from '../database/storable.js';
import { CatalogueAction } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { changeDraft, type ChangedDraft, type SeenDraft } from './change-draft.js';

/** Saves an item of a draft in full, defaults included: in the place of the one of its number, else as the last of the range. */
export async function saveItem(
  desk: Pick<CatalogueDesk, 'database' | 'person'>,
  { item: given, ...seen }: SeenDraft & { readonly item: ItemInput },
): Promise<ChangedDraft> {
  const item = itemSchema.parse(given);
  const { id, slot } = item;
  const version = await changeDraft(desk, seen, async (step, { id: revisionId }) => {
    const before = await step.catalogueItem.findUnique({ where: { revisionId_id: { revisionId, id } } });
    if (before !== null && isDeepStrictEqual(before.document, item)) return undefined;
    const document = storable(item);
    if (before === null) {
      const { _max: last } = await step.catalogueItem.aggregate({
        where: { revisionId },
        _max: { position: true },
      });
      const position = (last.position ?? 0) + 1;
      await step.catalogueItem.create({ data: { revisionId, id, slot, position, document } });
    } else
      await step.catalogueItem.update({
        where: { revisionId_id: { revisionId, id } },
        data: { slot, document },
      });
    return {
      action: CatalogueAction.item_saved,
      subject: id,
      after: item,
      ...(before === null ? {} : { before: before.document as object }),
    };
  });
  return { version, troubles: [] };
}
