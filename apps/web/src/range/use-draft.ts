import type { Catalogue, Item, PriceList } from '@flangewise/model';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { api } from '../api/client';
import { type Revision, type RevisionHead, revisionKey, revisionsKey } from './use-revision';

const withItem = (catalogue: Catalogue, item: Item): Catalogue => ({
  ...catalogue,
  items: catalogue.items.some(({ id }) => id === item.id)
    ? catalogue.items.map((one) => (one.id === item.id ? item : one))
    : [...catalogue.items, item],
});

const withoutItem = (catalogue: Catalogue, id: string): Catalogue => ({
  ...catalogue,
  items: catalogue.items.filter((item) => item.id !== id),
  priceLists: catalogue.priceLists.map((list) => withPrice(list, id, undefined)),
});

const withPrice = (list: PriceList, id: string, price: string | undefined): PriceList => {
  const { [id]: _, ...others } = list.prices;
  return { ...list, prices: price === undefined ? others : { ...others, [id]: price } };
};

const withList = (catalogue: Catalogue, list: PriceList): Catalogue => ({
  ...catalogue,
  priceLists: catalogue.priceLists.map((one) => (one.id === list.id ? list : one)),
});

export interface SavedItem {
  readonly item: Item;
  /** By list; an empty text takes one out. */
  readonly prices: Readonly<Record<string, string>>;
}

/** Changes of an open draft: each is sent with the version that was seen, and shown once it is saved. */
export function useDraft(draftId: string) {
  const queries = useQueryClient();
  const seen = (): Revision => {
    const revision = queries.getQueryData<Revision>(revisionKey(draftId));
    if (revision === undefined) throw new Error('The draft is not loaded yet.');
    return revision;
  };
  const keep = (version: number, change: (catalogue: Catalogue) => Catalogue): void => {
    const before = seen();
    const catalogue = change(before.catalogue);
    const items = catalogue.items.length;
    queries.setQueryData<Revision>(revisionKey(draftId), { ...before, version, catalogue, items });
    // The other sheets of the draft go by the version in the list.
    queries.setQueryData<readonly RevisionHead[]>(revisionsKey, (all) =>
      all?.map((one) => (one.id === draftId ? { ...one, version, items } : one)),
    );
  };

  const saveItem = useMutation({
    mutationFn: async ({ item, prices }: SavedItem) => {
      const { version } = await api.catalogue.saveItem.mutate({ draftId, version: seen().version, item });
      keep(version, (catalogue) => withItem(catalogue, item));
      for (const list of seen().catalogue.priceLists) {
        const price = prices[list.id] === '' ? undefined : prices[list.id];
        if (list.prices[item.id] === price) continue;
        const priceList = withPrice(list, item.id, price);
        const saved = await api.catalogue.savePriceList.mutate({
          draftId,
          version: seen().version,
          priceList,
        });
        keep(saved.version, (catalogue) => withList(catalogue, priceList));
      }
    },
  });

  const removeItem = useMutation({
    mutationFn: async (itemId: string) => {
      const answer = await api.catalogue.removeItem.mutate({ draftId, version: seen().version, itemId });
      keep(answer.version, (catalogue) => withoutItem(catalogue, itemId));
      return answer;
    },
  });

  const savePriceList = useMutation({
    mutationFn: async (priceList: PriceList) => {
      const { version } = await api.catalogue.savePriceList.mutate({
        draftId,
        version: seen().version,
        priceList,
      });
      keep(version, (catalogue) => withList(catalogue, priceList));
    },
  });

  return { saveItem, removeItem, savePriceList, seen };
}
