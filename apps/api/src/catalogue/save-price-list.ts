import { isDeepStrictEqual } from 'node:util';
import { priceListTroubles } from '@flangewise/catalogue';
import type { PriceList } from '@flangewise/model';
import { storable } from '../database/storable.js';
import { refuseFields } from '../errors/refuse-fields.js';
import { CatalogueAction } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { changeDraft, type ChangedDraft, type SeenDraft } from './change-draft.js';

/** The list without the prices that another has too. */
const apartFrom = (list: PriceList, other: PriceList | undefined): PriceList => ({
  ...list,
  prices: Object.fromEntries(
    Object.entries(list.prices).filter(([id, price]) => other?.prices[id] !== price),
  ),
});

/** Saves a price list of a draft: in the place of the one of its id, else as the last. */
export async function savePriceList(
  desk: Pick<CatalogueDesk, 'database' | 'person'>,
  { priceList: list, ...seen }: SeenDraft & { readonly priceList: PriceList },
): Promise<ChangedDraft> {
  const version = await changeDraft(desk, seen, async (step, { id: revisionId, priceLists }) => {
    const items = await step.catalogueItem.findMany({ where: { revisionId }, select: { id: true } });
    const troubles = priceListTroubles(list, new Set(items.map(({ id }) => id)));
    if (troubles.length > 0)
      throw refuseFields(troubles.map(({ path, ...trouble }) => ({ ...trouble, path: `priceList.${path}` })));
    const lists = priceLists as unknown as readonly PriceList[];
    const before = lists.find(({ id }) => id === list.id);
    if (isDeepStrictEqual(before, list)) return undefined;
    const saved = before === undefined ? [...lists, list] : lists.map((one) => (one === before ? list : one));
    return {
      action: CatalogueAction.price_list_saved,
      subject: list.id,
      after: apartFrom(list, before),
      ...(before === undefined ? {} : { before: apartFrom(before, list) }),
      data: { priceLists: storable(saved) },
    };
  });
  return { version, troubles: [] };
}
