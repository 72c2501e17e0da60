import { describe, expect, test } from 'vitest';
import { demoCatalogue } from './demo-catalogue.js';
import { itemTable } from './item-table.js';

/** Fields of comma-separated text by the grammar of RFC 4180 section 2. */
const parse = (text: string): readonly (readonly string[])[] =>
  [...text.matchAll(/(?:^|\r\n)((?:(?:"(?:[^"]|"")*"|[^",\r\n]*)(?:,|(?=\r\n)|$))+)/g)]
    .map((line) => line[1]!)
    .filter((line) => line !== '')
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^",]*)(?:,|$)/g)]
        .map((field) => field[1]!)
        .slice(0, 9)
        .map((field) => (field.startsWith('"') ? field.slice(1, -1).replaceAll('""', '"') : field)),
    );

describe('item table', () => {
  const lines = parse(itemTable(demoCatalogue));

  test('has a head line and a line an item', () => {
    expect(lines[0]).toEqual([
      'slot',
      'id',
      'name',
      'families',
      'massKg',
      'leadTimeDays',
      'wetted',
      'life',
      'attributes',
    ]);
    expect(lines).toHaveLength(demoCatalogue.items.length + 1);
  });

  test('every item can be put together again from its line', () => {
    demoCatalogue.items.forEach((item, index) => {
      const [slot, id, name, families, massKg, leadTimeDays, wetted, life, attributes] = lines[index + 1]!;
      expect({
        slot,
        id,
        name,
        families: families!.split(' '),
        massKg: Number(massKg),
        leadTimeDays: Number(leadTimeDays),
        wetted: wetted === '' ? [] : wetted!.split('; '),
        life,
        ...(JSON.parse(attributes!) as object),
      }).toEqual(item);
    });
  });

  test('has no price', () => {
    expect(itemTable(demoCatalogue)).not.toMatch(/price/i);
  });
});
