import { describe, expect, test } from 'vitest';
import { pricedDemoCatalogue as catalogue } from './prices.js';
import { readCatalogue } from './read-catalogue.js';

const copy = (): typeof catalogue => JSON.parse(JSON.stringify(catalogue)) as typeof catalogue;
const troublesOf = (document: unknown): readonly { path: string; given: string; message: string }[] => {
  const read = readCatalogue(document);
  return read.ok ? [] : read.error;
};

describe('reading a catalogue', () => {
  test('what was written is read back unchanged', () => {
    const read = readCatalogue(copy());
    expect(read.ok && read.value).toEqual(catalogue);
  });

  test('all troubles come at once, each with path, given value and what is allowed', () => {
    const broken = copy();
    Object.assign(broken.items[0]!, { bore: -3 });
    Object.assign(broken.items[2]!, { massKg: 'heavy' });
    Object.assign(broken.items[4]!, { colour: 'red' });
    const troubles = troublesOf(broken);
    expect(troubles.map((t) => t.path)).toEqual(['items[0].bore', 'items[2].massKg', 'items[4].colour']);
    expect(troubles[0]).toMatchObject({ given: '-3' });
    expect(troubles[1]).toMatchObject({ given: '"heavy"' });
    expect(troubles[2]!.message).toMatch(/no such field; allowed are .*innerVolumeL/);
    expect(troubles[2]!.message).not.toContain('ratedTorque');
    for (const { message } of troubles) expect(message.length).toBeGreaterThan(10);
  });

  test('a number that is given twice is named at its second place', () => {
    const doubled = copy();
    doubled.items.push({ ...doubled.items[0]! });
    expect(troublesOf(doubled)).toMatchObject([
      { path: `items[${String(catalogue.items.length)}].id`, given: '"VS-1001"' },
    ]);
  });

  test('prices of unknown items, lists that end before they begin and repeated lists are named', () => {
    const broken = copy();
    const list = broken.priceLists[0]!;
    list.prices['ZZ-9999'] = '10';
    list.validUntil = '2020-01-01';
    broken.priceLists[1]!.id = list.id;
    expect(troublesOf(broken).map((t) => t.path)).toEqual([
      'priceLists[1].id',
      'priceLists[0].validUntil',
      'priceLists[0].prices.ZZ-9999',
    ]);
  });

  test.each([[undefined], [null], ['text'], [[]], [{}], [{ items: 3 }]])(
    '%j is refused, not thrown at',
    (odd) => {
      expect(troublesOf(odd).length).toBeGreaterThan(0);
    },
  );
});
