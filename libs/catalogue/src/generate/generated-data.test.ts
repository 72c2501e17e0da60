import { describe, expect, test } from 'vitest';
import { catalogueRevision } from '../catalogue-revision.js';
import { demoCatalogue } from '../demo-catalogue.js';
import { pricedDemoCatalogue, priceLists } from '../prices.js';
import { generatedRange, revisionOf, typedPriceLists, withSeriesPrices } from './generated-data.js';

describe('generated data files', () => {
  const { items, seriesPricesEur } = generatedRange();

  test('every item on file is what is typed, or what its design or series gives today', () => {
    expect(demoCatalogue.items).toEqual(items);
  });

  test('every price on file is typed, or that of its series', () => {
    const lists = typedPriceLists().map((list) => withSeriesPrices(list, seriesPricesEur));
    expect(priceLists).toEqual(lists);
  });

  test('names tell the items of a slot and family apart', () => {
    const seen = new Map<string, string>();
    for (const { id, slot, name, families } of items) {
      const key = `${slot}|${name}|${families.join()}`;
      expect(seen.get(key), `${id} ${name}`).toBeUndefined();
      seen.set(key, id);
    }
  });

  const month = catalogueRevision.slice(0, 7);

  test('the revision names the items and the prices on file', () => {
    expect(revisionOf(month, pricedDemoCatalogue)).toBe(catalogueRevision);
    const [first, ...others] = pricedDemoCatalogue.items;
    const later = [{ ...first!, leadTimeDays: first!.leadTimeDays + 1 }, ...others];
    expect(revisionOf(month, { ...pricedDemoCatalogue, items: later })).not.toBe(catalogueRevision);
    const dearer = priceLists.map((list) => ({ ...list, prices: { ...list.prices, [first!.id]: '1' } }));
    expect(revisionOf(month, { ...pricedDemoCatalogue, priceLists: dearer })).not.toBe(catalogueRevision);
  });

  test('the revision hangs on what the items say, not on the order of their fields', () => {
    const turned = pricedDemoCatalogue.items.map(
      (item) => Object.fromEntries(Object.entries(item).reverse()) as typeof item,
    );
    expect(revisionOf(month, { ...pricedDemoCatalogue, items: turned })).toBe(catalogueRevision);
  });
});
