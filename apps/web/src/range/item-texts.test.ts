import { readdirSync, readFileSync } from 'node:fs';
import { type Item, slotNames } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { countIn, freeNumber, readTexts, textsOf, withoutOne } from './item-texts';

const data = new URL('../../../../libs/catalogue/src/data/', import.meta.url);
const items = readdirSync(data)
  .filter((file) => file.endsWith('.json'))
  .map((file) => JSON.parse(readFileSync(new URL(file, data), 'utf8')) as unknown)
  .flatMap((content) => (Array.isArray(content) ? (content as Item[]) : []));
const first = (slot: (typeof slotNames)[number]): Item => items.find((item) => item.slot === slot)!;

describe('fields of an item', () => {
  it.each(slotNames)('give back every item of %s as it was', (slot) => {
    for (const item of items.filter((one) => one.slot === slot)) {
      const read = readTexts(slot, textsOf(item));
      expect(read, item.id).toEqual({ ok: true, item });
    }
  });

  it('show values in the units in which people read them, and take others', () => {
    const shield = first('shield');
    const texts = textsOf(shield);
    expect(Number(texts['maxDiameterM'])).toBeCloseTo(
      (shield as Item & { maxDiameterM: number }).maxDiameterM * 1000,
    );
    const read = readTexts('shield', { ...texts, maxDiameterM: '12 in', massKg: '12,5' });
    expect(read).toMatchObject({ ok: true, item: { maxDiameterM: 0.3048, massKg: 12.5 } });
  });

  it('tell each field that cannot be used, and what is allowed there', () => {
    const read = readTexts('shield', { ...textsOf(first('shield')), massKg: 'heavy', interlock: 'perhaps' });
    expect(read).toMatchObject({
      ok: false,
      troubles: {
        massKg: 'it is no number; give a number in kg, at least 0',
        interlock: 'give yes or no',
      },
    });
  });

  it('tell a field that has to be written', () => {
    const { name: _, ...texts } = textsOf(first('shield'));
    expect(readTexts('shield', texts)).toEqual({ ok: false, troubles: { name: 'give a text' } });
  });

  it('lose one of several, and those after it move up', () => {
    const texts = textsOf(first('cover'));
    const count = countIn(texts, 'ports');
    const fewer = withoutOne(texts, { list: 'ports', index: 0 });
    expect(countIn(fewer, 'ports')).toBe(count - 1);
    expect(fewer['ports[0].name']).toBe(texts['ports[1].name']);
    expect(readTexts('cover', fewer).ok).toBe(true);
  });

  it('begin with a number that no item has', () => {
    for (const slot of slotNames) {
      const number = freeNumber(items, slot);
      expect(number).toMatch(/^[A-Z]{2}-\d{4,5}$/);
      expect(items.some(({ id }) => id === number)).toBe(false);
    }
  });
});
