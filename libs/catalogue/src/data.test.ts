import { describe, expect, test } from 'vitest';
import { catalogueSchema, itemSchema, slotNames } from '@flangewise/model';
import { demoCatalogue } from './demo-catalogue.js';
import { itemById, itemsOfSlot } from './find-items.js';
import { pricedDemoCatalogue, priceLists } from './prices.js';
import { range } from './range.js';
import { rangeSchema } from './range-schema.js';

describe('data of the demo range', () => {
  test.each(slotNames)('every %s is as the schema writes it, defaults included', (slot) => {
    const found = itemsOfSlot(demoCatalogue, slot);
    expect(found.length).toBeGreaterThan(0);
    for (const item of found) {
      const parsed = itemSchema.safeParse(item);
      expect(parsed.error?.issues ?? [], item.id).toEqual([]);
      expect(parsed.data, item.id).toEqual(item);
    }
  });

  test('the catalogue with its price lists passes its schema', () => {
    expect(catalogueSchema.safeParse(pricedDemoCatalogue).error?.issues ?? []).toEqual([]);
    expect(rangeSchema.parse(range)).toEqual(range);
  });

  test('no number is given twice', () => {
    const ids = demoCatalogue.items.map((i) => i.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(itemById(demoCatalogue, id)?.id).toBe(id);
  });

  test('no two items of a slot have the same name', () => {
    const names = demoCatalogue.items.map(({ slot, name }) => `${slot}: ${name}`);
    expect(names.filter((name, k) => names.indexOf(name) < k)).toEqual([]);
  });

  test('families are those of the range', () => {
    const names = new Set([...range.families.map((f) => f.name), 'any']);
    for (const item of demoCatalogue.items)
      for (const family of item.families) expect(names, item.id).toContain(family);
  });

  test.each(priceLists.map((l) => [l.id, l] as const))('%s prices every item and nothing else', (_, list) => {
    expect(Object.keys(list.prices).sort()).toEqual(demoCatalogue.items.map((i) => i.id).sort());
    for (const price of Object.values(list.prices)) expect(price).toMatch(/^\d+$/);
  });
});
