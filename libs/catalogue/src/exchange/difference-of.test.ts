import type { Catalogue } from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import { pricedDemoCatalogue as catalogue } from '../prices.js';
import { differenceOf } from './difference-of.js';

const [eur, gbp] = catalogue.priceLists as [Catalogue['priceLists'][0], Catalogue['priceLists'][0]];
const vessel = catalogue.items.find(({ slot }) => slot === 'vessel')!;
const shield = catalogue.items.find(({ slot }) => slot === 'shield')!;
const replaced = (id: string, changes: object): Catalogue => ({
  ...catalogue,
  items: catalogue.items.map((item) => (item.id === id ? ({ ...item, ...changes } as typeof item) : item)),
});
const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u2009\u2060', ' ');

describe('the difference of two catalogues', () => {
  test('tells fields in the units in which people read them', () => {
    const other = replaced(shield.id, { maxDiameterM: 0.4321, interlock: false, reachM: 0.25 });
    const { changed, added, removed, prices } = differenceOf(catalogue, other);
    expect([added, removed, prices]).toEqual([[], [], []]);
    expect(changed.map(({ id }) => id)).toEqual([shield.id]);
    const fields = changed[0]!.fields;
    expect(plain(fields.find(({ path }) => path === 'maxDiameterM')?.after)).toBe('432.1 mm');
    expect(fields.find(({ path }) => path === 'reachM')).toMatchObject({ label: 'reach', before: null });
  });

  test('tells a last digit that nobody would see', () => {
    const before = replaced(shield.id, { massKg: 0.1 });
    const after = replaced(shield.id, { massKg: 0.1 + 2 ** -56 });
    const [field] = differenceOf(before, after).changed[0]?.fields ?? [];
    expect(field).toBeDefined();
    expect(field!.before).not.toBe(field!.after);
  });

  test('turns round: what was added is removed', () => {
    const shorter = { ...catalogue, revision: 'shorter', items: catalogue.items.slice(3) };
    const there = differenceOf(catalogue, shorter);
    const back = differenceOf(shorter, catalogue);
    expect(there.removed).toEqual(back.added);
    expect(there.removed.map(({ id }) => id)).toEqual(catalogue.items.slice(0, 3).map(({ id }) => id));
    expect([there.to, back.from]).toEqual(['shorter', 'shorter']);
  });

  test('tells prices one by one, and lists that came, went or changed', () => {
    const other: Catalogue = {
      ...catalogue,
      priceLists: [
        { ...eur, validUntil: '2029-01-31', prices: { ...eur.prices, [vessel.id]: '1' } },
        { ...gbp, id: 'new list' },
      ],
    };
    const { prices, priceLists } = differenceOf(catalogue, other);
    expect(prices).toEqual([
      {
        id: vessel.id,
        name: vessel.name,
        priceList: eur.id,
        currency: 'EUR',
        before: eur.prices[vessel.id],
        after: '1',
      },
    ]);
    expect(priceLists).toEqual([
      {
        id: eur.id,
        kind: 'changed',
        fields: [{ path: 'validUntil', label: 'valid until', before: eur.validUntil, after: '2029-01-31' }],
      },
      { id: 'new list', kind: 'added', fields: [] },
      { id: gbp.id, kind: 'removed', fields: [] },
    ]);
  });
});
