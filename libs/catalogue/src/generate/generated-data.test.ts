import { describe, expect, test } from 'vitest';
import { catalogueRevision } from '../catalogue-revision.js';
import { demoCatalogue } from '../demo-catalogue.js';
import { itemsOfSlot } from '../find-items.js';
import { computedItems, revisionOf } from './generated-data.js';

describe('computed data files', () => {
  const computed = computedItems();

  test.each(['vessel', 'cover'] as const)('every %s on file is what its design gives today', (slot) => {
    expect(itemsOfSlot(demoCatalogue, slot)).toEqual(computed[slot]);
  });

  test('the revision names the items on file', () => {
    const month = catalogueRevision.slice(0, 7);
    expect(revisionOf(month, demoCatalogue.items)).toBe(catalogueRevision);
    const [first, ...others] = demoCatalogue.items;
    expect(revisionOf(month, [{ ...first!, leadTimeDays: first!.leadTimeDays + 1 }, ...others])).not.toBe(
      catalogueRevision,
    );
  });

  test('the revision hangs on what the items say, not on the order of their fields', () => {
    const turned = demoCatalogue.items.map(
      (item) => Object.fromEntries(Object.entries(item).reverse()) as typeof item,
    );
    expect(revisionOf('2026-11', turned)).toBe(revisionOf('2026-11', demoCatalogue.items));
  });
});
