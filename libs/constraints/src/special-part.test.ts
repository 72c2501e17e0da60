import { pricedDemoCatalogue as catalogue } from '@flangewise/catalogue/prices';
import {
  type ItemOf,
  readDocument,
  type SpecialPartWish,
  type System,
  systemSchema,
} from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import { assess } from './assess.js';
import { createBench } from './bench.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';
import { makeSpecialPart } from './special-part.js';
import { benchOf, specialsOf } from './special-vessel.js';

const { specialRates } = catalogue.priceLists[0]!;
const range = rangeOf(catalogue, { deliveryDays: () => 0, specialRates: specialRates! });
const like = range.items.get('CV-1008') as ItemOf<'cover'>;
const shaft = range.items.get('SH-3003') as ItemOf<'shaft'>;

/** With plain spaces where a number and its unit are kept on one line. */
const plain = (text: string): string =>
  text.replaceAll(/[^\S\n]+|\u2060/g, (blank) => (blank === '\u2060' ? '' : ' '));

const made = (wish: SpecialPartWish) => {
  const outcome = makeSpecialPart(wish, range);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};
const cover = (ports: ItemOf<'cover'>['ports']) => made({ kind: 'cover', set: 0, basedOn: like.id, ports });
const longer = (lengthM: number) => made({ kind: 'shaft', set: 1, basedOn: shaft.id, lengthM });

describe('a cover with other ports', () => {
  const wider = like.ports.map((port) => (port.name === 'N1' ? { ...port, diameterM: 0.028 } : port));

  test('is as thick as its ports need, and heavier where that is more', () => {
    const usual = cover([...like.ports]);
    const item = cover(wider).item as ItemOf<'cover'>;
    expect((usual.item as ItemOf<'cover'>).thicknessM).toBeCloseTo(like.thicknessM, 3);
    expect(item.thicknessM).toBeGreaterThan(like.thicknessM);
    expect(item.massKg).toBeGreaterThan(like.massKg);
    expect(item).toMatchObject({ id: 'SC-0001', special: true, rating: like.rating, ports: wider });
    expect(item.wetted).toEqual(like.wetted);
  });

  test('costs plate, machining and engineering by the rates, and says how it deviates', () => {
    const { price, deviations, item } = cover(wider);
    const [ports, thickness] = deviations.map(plain);
    const rate = specialRates!.materials.find(({ material }) => material === like.material)!;
    const least = item.massKg * (rate.pricePerKg + rate.machiningPerKg) + specialRates!.engineering;
    expect(price).toBeGreaterThanOrEqual(least);
    expect(price).toBeLessThan(1.2 * least);
    expect(ports).toMatch(/^ports N1 28 mm, .* instead of N1 20 mm/);
    expect(thickness).toMatch(/^thickness .* instead of/);
  });

  test('is refused where ports meet each other, the shaft or the seal', () => {
    const refused = (change: object) =>
      makeSpecialPart(
        {
          kind: 'cover',
          set: 0,
          basedOn: like.id,
          ports: like.ports.map((port) => (port.name === 'N1' ? { ...port, ...change } : port)),
        },
        range,
      );
    expect(refused({ diameterM: 0.06 })).toMatchObject({
      ok: false,
      error: { field: 'ports', message: expect.stringMatching(/N1/) as string },
    });
    expect(refused({ boltCircleM: 0.125 })).toMatchObject({ ok: false, error: { field: 'ports' } });
    expect(refused({ boltCircleM: 0.03 })).toMatchObject({ ok: false, error: { field: 'ports' } });
  });
});

describe('a shaft of another length', () => {
  test('weighs what is added, and nothing else of it changes', () => {
    const { item, deviations } = longer(0.475);
    const added = 8000 * (Math.PI / 4) * shaft.diameterM ** 2 * 0.1;
    expect(item.massKg - shaft.massKg).toBeGreaterThan(0.95 * added);
    expect(item.massKg - shaft.massKg).toBeLessThan(1.05 * added);
    expect(item).toMatchObject({ id: 'SS-0002', lengthM: 0.475, special: true, diameterM: shaft.diameterM });
    expect(plain(deviations[0]!)).toMatch(/free length 475 mm instead of 375 mm/);
  });

  test('of the usual length, or like an item that is no shaft, is refused', () => {
    expect(
      makeSpecialPart({ kind: 'shaft', set: 0, basedOn: shaft.id, lengthM: shaft.lengthM }, range),
    ).toMatchObject({ ok: false, error: { field: 'lengthM' } });
    expect(makeSpecialPart({ kind: 'shaft', set: 0, basedOn: like.id, lengthM: 0.4 }, range)).toMatchObject({
      ok: false,
      error: { field: 'basedOn', given: like.id },
    });
  });
});

describe('a system with special parts', () => {
  const system = (releasedBy?: string): System => {
    const read = readDocument(systemSchema, {
      inquiry: { title: 'Specials' },
      sets: [{ choices: { cover: 'SC-0001', shaft: 'SS-0001' } }],
      specialParts: [
        { kind: 'cover', basedOn: like.id, ports: like.ports.slice(0, 6) },
        {
          kind: 'shaft',
          basedOn: shaft.id,
          lengthM: 0.475,
          ...(releasedBy === undefined ? {} : { releasedBy }),
        },
      ],
    });
    if (!read.ok) throw new Error(JSON.stringify(read.error));
    return read.value;
  };

  test('is outside the standard range until each is released', () => {
    const bench = createBench(range, ruleBook);
    const outside = assess(system(), benchOf(system(), bench)).results.filter(
      ({ status }) => status === 'outside standard range',
    );
    expect(outside.map(({ rule }) => rule).sort()).toEqual([
      'stirring.special-shaft',
      'strength.special-cover',
    ]);
    const parts = specialsOf(system('A. Approver'), range);
    if (!parts.ok) throw new Error(parts.error.message);
    expect(parts.value.map(({ item, releasedBy }) => [item.id, releasedBy])).toEqual([
      ['SC-0001', undefined],
      ['SS-0001', 'A. Approver'],
    ]);
  });
});
