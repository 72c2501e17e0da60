import { readdirSync, readFileSync } from 'node:fs';
import { type Item, slotNames } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { findParts, partsOf, type Wanted } from './find-parts';

const data = new URL('../../../../libs/catalogue/src/data/', import.meta.url);
/** The items of the range; other files hold no list. */
const items = readdirSync(data)
  .filter((file) => file.endsWith('.json'))
  .map((file) => JSON.parse(readFileSync(new URL(file, data), 'utf8')) as unknown)
  .flatMap((content) => (Array.isArray(content) ? (content as Item[]) : []));
const parts = partsOf(items);
const idsOf = (text: string, slot?: (typeof slotNames)[number]): readonly string[] =>
  findParts(parts, { text, slot }).flatMap((group) => group.parts.map(({ item }) => item.id));

const idsFor = (kinds: Partial<Wanted>): readonly string[] =>
  findParts(parts, { text: '', slot: undefined, ...kinds }).flatMap((group) =>
    group.parts.map(({ item }) => item.id),
  );
const partsInOrder = slotNames.flatMap((slot) => items.filter((item) => item.slot === slot));

const textOf = (id: string): string => parts.find(({ item }) => item.id === id)?.text ?? '';

describe('finding parts', () => {
  it('shows every part once, slot by slot, when nothing is asked', () => {
    const groups = findParts(parts, { text: ' ', slot: undefined });
    expect(groups.map(({ slot }) => slot)).toEqual(slotNames);
    expect(items.length).toBeGreaterThan(600);
    expect(groups.flatMap((group) => group.parts)).toHaveLength(items.length);
  });

  it('finds a part by its number, whatever its case', () => {
    expect(idsOf('vs-1001')).toEqual(['VS-1001']);
  });

  it('finds parts that have every word somewhere, in any order', () => {
    const found = idsOf('1.4404 gauge 160 bar');
    expect(found).toContain('PG-1001');
    for (const id of found) expect(id).toMatch(/^PG-/);
    expect(idsOf('160 bar gauge 1.4404')).toEqual(found);
  });

  it('takes a number and its unit as one value, however they are written', () => {
    const found = idsOf('5 L');
    expect(found.length).toBeGreaterThan(0);
    for (const id of found) expect(textOf(id), id).toMatch(/(?<![\d.−])5 l(?![a-z\d])/);
    expect(found.length).toBeLessThan(items.length / 10);
    expect(idsOf('5l')).toEqual(found);
    expect(idsOf('5.0001 L')).toEqual([]);
  });

  it('knows the other names of a unit', () => {
    expect(idsOf('1200 rpm').length).toBeGreaterThan(0);
    expect(idsOf('1200 rpm')).toEqual(idsOf('1200 1/min'));
    expect(idsOf('500 mPa·s').length).toBeGreaterThan(0);
  });

  it('finds whole words, and not what ends another', () => {
    const found = idsOf('FKM');
    expect(found.length).toBeGreaterThan(0);
    for (const id of found) expect(textOf(id), id).toMatch(/(?<![a-z])fkm/);
    const perfluorinated = idsOf('FFKM').filter((id) => !/(?<![a-z])fkm/.test(textOf(id)));
    expect(perfluorinated.length).toBeGreaterThan(0);
    for (const id of perfluorinated) expect(found).not.toContain(id);
  });

  it('takes what is no whole word as the beginning of one, so that part numbers can be typed', () => {
    const numbered = items.filter(({ id }) => id.startsWith('VS-10')).map(({ id }) => id);
    expect(idsOf('vs-10')).toEqual(numbered);
    expect(idsOf('vess')).toEqual(expect.arrayContaining(numbered));
  });

  it('keeps to a family, to which parts of any family belong too', () => {
    const found = idsFor({ family: 'Tarn' });
    expect(found).toEqual(
      partsInOrder
        .filter(({ families }) => families.some((one) => one === 'Tarn' || one === 'any'))
        .map(({ id }) => id),
    );
    expect(found.length).toBeLessThan(items.length);
  });

  it('keeps to a wetted material and a stage of life', () => {
    const wanted = { material: 'PTFE', life: 'current' } as const;
    const found = idsFor(wanted);
    expect(found.length).toBeGreaterThan(0);
    expect(found).toEqual(
      partsInOrder
        .filter(({ wetted, life }) => wetted.includes('PTFE') && life === 'current')
        .map(({ id }) => id),
    );
  });

  it('keeps to a slot', () => {
    expect(idsOf('', 'shield')).toEqual(items.filter(({ slot }) => slot === 'shield').map(({ id }) => id));
    expect(idsOf('vs-1001', 'shield')).toEqual([]);
  });
});

describe('values of a part', () => {
  const partOf = (id: string) => parts.find(({ item }) => item.id === id);
  const plain = (texts: readonly string[] | undefined): string =>
    (texts ?? []).join('; ').replaceAll('\u2009\u2060', ' ');

  it('has a value with its unit for every part', () => {
    for (const { item, values } of parts) {
      expect(values.length, item.id).toBeGreaterThan(0);
      for (const value of values) expect(value, item.id).not.toMatch(/undefined|NaN|null|–|^\s*$/);
    }
  });

  it('says what a vessel holds and stands', () => {
    const vessel = partOf('VS-1001');
    expect(plain(vessel?.values)).toMatch(
      /^holds 5(\.\d+)? mL; Ø [\d.]+ mm, [\d.]+ mm deep; bore 20; no jacket$/,
    );
    expect(plain(vessel?.rating)).toBe('150 bar(g); −60 °C to 250 °C; vacuum');
  });

  it('says what a drive gives', () => {
    expect(plain(partOf('DR-1001')?.values)).toBe('60 W; 1.8 N·m; 100 1/min to 1200 1/min');
  });
});
