import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { itemsOfSlot } from '@flangewise/catalogue';
import { pricedDemoCatalogue as catalogue } from '@flangewise/catalogue/prices';
import {
  frameSlots,
  type Offer,
  offerSchema,
  setSlots,
  type SlotName,
  type System,
  type SystemInput,
  systemSchema,
} from '@flangewise/model';
import { additivePrices } from './additive-prices.js';
import type { SpecialPart } from './bill-of-materials.js';
import { deliveryDaysOf } from './delivery.js';
import { makeOffer, type MadeOffer, type OfferInput } from './make-offer.js';
import { Money } from './money.js';

const first = (slot: SlotName): string => itemsOfSlot(catalogue, slot)[0]!.id;
const choicesOf = (slots: readonly SlotName[]): Record<string, string> =>
  Object.fromEntries(slots.map((slot) => [slot, first(slot)]));

const systemOf = (change: Partial<SystemInput> = {}): System =>
  systemSchema.parse({
    inquiry: { title: 'Hydrogenation', sets: change.sets?.map(() => ({})) ?? [{}] },
    frame: choicesOf(frameSlots),
    sets: [{ choices: choicesOf(setSlots) }],
    ...change,
  });

const made = (change: Partial<OfferInput> = {}): MadeOffer => {
  const outcome = makeOffer({ system: systemOf(), catalogue, ruleRevision: 'rules-1', ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

const quantityOf = (offer: Offer, item: string): number =>
  offer.positions.find((p) => p.item === item)?.quantity ?? 0;

describe('bill of materials', () => {
  test('the count of a set multiplies its parts and leaves the frame alone', () => {
    const { offer } = made({ system: systemOf({ sets: [{ count: 6, choices: choicesOf(setSlots) }] }) });
    expect(quantityOf(offer, first('vessel'))).toBe(6);
    expect(quantityOf(offer, first('drive'))).toBe(1);
  });

  test('the same item in several sets stands on one line with all its places', () => {
    const { offer } = made({
      system: systemOf({
        sets: [{ choices: choicesOf(setSlots) }, { count: 2, choices: choicesOf(setSlots) }],
      }),
    });
    const vessel = offer.positions.find((p) => p.item === first('vessel'));
    expect(vessel).toMatchObject({ quantity: 3, slots: ['sets[0].vessel', 'sets[1].vessel'] });
    expect(new Set(offer.positions.map((p) => p.item)).size).toBe(offer.positions.length);
  });

  test('none of these is no position, and the wetted material is none either', () => {
    const { offer } = made({ system: systemOf({ frame: { ...choicesOf(frameSlots), lift: null } }) });
    expect(offer.positions.some((p) => p.slots.includes('frame.lift'))).toBe(false);
    expect(offer.positions.some((p) => p.slots.some((s) => s.endsWith('.material')))).toBe(false);
  });

  test.each([
    {
      what: 'a number that nobody knows',
      change: { sets: [{ choices: { vessel: 'VS-9999' } }] },
      error: { code: 'QUOTE_UNKNOWN_ITEM', path: 'sets[0].vessel' },
    },
    {
      what: 'an item of another slot',
      change: { frame: { drive: first('vessel') } },
      error: { code: 'QUOTE_WRONG_SLOT', path: 'frame.drive' },
    },
    {
      what: 'an empty system',
      change: { frame: {}, sets: [{ choices: {} }] },
      error: { code: 'QUOTE_NOTHING_CHOSEN' },
    },
  ])('refuses $what', ({ change, error }) => {
    const outcome = makeOffer({ system: systemOf(change), catalogue, ruleRevision: 'rules-1' });
    expect(outcome).toMatchObject({ ok: false, error });
  });
});

describe('offer', () => {
  test('fits its schema and names what it rests on', () => {
    const { offer, blocking } = made();
    expect(offerSchema.parse(offer)).toEqual(offer);
    expect(offer).toMatchObject({
      catalogueRevision: catalogue.revision,
      ruleRevision: 'rules-1',
      currency: 'EUR',
    });
    expect(blocking).toEqual([]);
    expect(offer.watermark).toBeUndefined();
  });

  test('uses the list that the system names', () => {
    const { offer } = made({ system: systemOf({ offer: { priceList: '2026-11-GBP' } }) });
    expect(offer.currency).toBe('GBP');
    expect(
      makeOffer({ system: systemOf({ offer: { priceList: '1999' } }), catalogue, ruleRevision: 'r' }),
    ).toMatchObject({ ok: false, error: { code: 'QUOTE_UNKNOWN_PRICE_LIST' } });
  });

  test('takes the currency that the inquiry asks for where its offer names no list', () => {
    const inquiry = { title: 'Hydrogenation', commercial: { currency: 'GBP' as const } };
    expect(made({ system: systemOf({ inquiry }) }).offer.priceList).toBe('2026-11-GBP');
    const offer = { priceList: '2026-11-EUR' };
    expect(made({ system: systemOf({ inquiry, offer }) }).offer.priceList).toBe('2026-11-EUR');
  });

  test('is not dated after the end of its price list', () => {
    const dated = (date: string) =>
      makeOffer({ system: systemOf({ offer: { date } }), catalogue, ruleRevision: 'r' });
    expect(dated('2027-04-30')).toMatchObject({ ok: true, value: { offer: { validUntil: '2027-04-30' } } });
    expect(dated('2027-05-01')).toMatchObject({
      ok: false,
      error: {
        code: 'QUOTE_PRICE_LIST_ENDED',
        path: 'offer.date',
        message: expect.stringMatching(/2027-05-01 given.* up to 2027-04-30/),
      },
    });
  });

  test('stands sixty days, but never longer than its price list', () => {
    const until = (date: string): string | undefined =>
      made({ system: systemOf({ offer: { date } }) }).offer.validUntil;
    expect(until('2026-11-15')).toBe('2027-01-14');
    expect(until('2027-04-15')).toBe('2027-04-30');
    expect(made().offer.validUntil).toBeUndefined();
  });

  test('a discount above five percent is watermarked until an approver releases it', () => {
    const asked = (discountPercent: string, discountReleasedBy?: string): MadeOffer =>
      made({
        system: systemOf({
          offer: { discountPercent, ...(discountReleasedBy === undefined ? {} : { discountReleasedBy }) },
        }),
      });
    expect(asked('5').offer.watermark).toBeUndefined();
    expect(asked('5.01').offer.watermark).toBe('NOT RELEASED');
    expect(asked('5.01').blocking).toHaveLength(1);
    expect(asked('12', 'E. Example').offer.watermark).toBeUndefined();
    expect(
      makeOffer({ system: systemOf({ offer: { discountPercent: '40' } }), catalogue, ruleRevision: 'r' }),
    ).toMatchObject({ ok: false, error: { code: 'QUOTE_DISCOUNT_TOO_HIGH' } });
  });

  test('what the assessment holds against it keeps the watermark on', () => {
    const { offer, blocking } = made({ blocking: ['Relief is not decidable.'] });
    expect(blocking).toEqual(['Relief is not decidable.']);
    expect(offer.watermark).toBe('NOT RELEASED');
  });

  test('a special is priced by its own figure and blocks until it is released', () => {
    const vessel = itemsOfSlot(catalogue, 'vessel')[0]!;
    const item = { ...vessel, id: 'XX-0001', name: 'Special vessel 2 L', leadTimeDays: 130 };
    const system = systemOf({ sets: [{ choices: { ...choicesOf(setSlots), vessel: 'XX-0001' } }] });
    const part: SpecialPart = { item, price: 18450 };
    const open = made({ system, specials: [part] });
    expect(open.offer.positions[0]).toMatchObject({
      special: true,
      unitPrice: '18450.00',
      total: '18450.00',
    });
    expect(open.offer.watermark).toBe('NOT RELEASED');
    expect(open.offer.deliveryChain[0]).toEqual({ step: 'Special vessel 2 L', days: 130 });
    expect(
      made({ system, specials: [{ ...part, releasedBy: 'E. Example' }] }).offer.watermark,
    ).toBeUndefined();
  });

  test('delivery is the slowest part, then assembly, test and papers, in weeks of five days', () => {
    const { offer, deliveryDays } = made();
    const days = offer.deliveryChain.map((step) => step.days);
    const parts = offer.positions.flatMap((p) => catalogue.items.filter((i) => i.id === p.item));
    const slowest = Math.max(...parts.filter((i) => i.slot !== 'qualification').map((i) => i.leadTimeDays));
    expect(days[0]).toBe(slowest);
    expect(deliveryDays).toBe(days.reduce((sum, d) => sum + d, 0));
    expect(offer.deliveryWeeks).toBe(Math.ceil(deliveryDays / 5));
    expect(deliveryDaysOf(parts)).toBe(deliveryDays);
  });
});

const anyChoices = (names: readonly SlotName[]): fc.Arbitrary<Record<string, string | null>> =>
  fc.record(
    Object.fromEntries(
      names.map((slot) => [slot, fc.constantFrom(null, ...itemsOfSlot(catalogue, slot).map((i) => i.id))]),
    ),
  );

const anySystem = fc
  .record({
    frame: anyChoices(frameSlots),
    sets: fc.array(fc.record({ count: fc.integer({ min: 1, max: 48 }), choices: anyChoices(setSlots) }), {
      minLength: 1,
      maxLength: 4,
    }),
    discountPercent: fc.integer({ min: 0, max: 2500 }).map((h) => new Money(h).div(100).toFixed(2)),
    taxPercent: fc.integer({ min: 0, max: 2500 }).map((h) => new Money(h).div(100).toFixed(2)),
  })
  .map(({ discountPercent, taxPercent, ...choices }) =>
    systemOf({ ...choices, offer: { discountPercent, taxPercent } }),
  );

describe('reconciliation', () => {
  const cents = (text: string): bigint => BigInt(text.replace('.', ''));
  const prices = additivePrices(catalogue, '2026-11-EUR');
  if (!prices.ok) throw new Error(prices.error.message);

  test('positions add up to the list total, and that to the total, for any system', () => {
    fc.assert(
      fc.property(anySystem, (system) => {
        const outcome = makeOffer({ system, catalogue, ruleRevision: 'r' });
        if (!outcome.ok) {
          expect(outcome.error.code).toBe('QUOTE_NOTHING_CHOSEN');
          return;
        }
        const { offer } = outcome.value;
        for (const p of offer.positions) expect(cents(p.total)).toBe(cents(p.unitPrice) * BigInt(p.quantity));
        expect(offer.positions.reduce((sum, p) => sum + cents(p.total), 0n)).toBe(cents(offer.listTotal));
        const steps = (offer.quantitySteps ?? []).reduce((sum, step) => sum + cents(step.amount), 0n);
        expect(cents(offer.listTotal) + steps - cents(offer.discount)).toBe(cents(offer.net));
        expect(cents(offer.net) + cents(offer.tax)).toBe(cents(offer.total));
      }),
    );
  });

  test('the list total is the sum of additive prices that a search adds up', () => {
    fc.assert(
      fc.property(anySystem, (system) => {
        const outcome = makeOffer({ system, catalogue, ruleRevision: 'r' });
        if (!outcome.ok) return;
        const sum = (choices: Record<string, string | null | undefined>): number =>
          Object.values(choices).reduce(
            (s, id) => s + (typeof id === 'string' ? prices.value.get(id)! : 0),
            0,
          );
        const added =
          sum(system.frame) + system.sets.reduce((s, { count, choices }) => s + count * sum(choices), 0);
        expect(outcome.value.offer.listTotal).toBe(`${String(added)}.00`);
      }),
    );
  });

  test('additive prices cover every item with a whole number, and say what is wrong with a list', () => {
    expect(prices.value.size).toBe(catalogue.items.length);
    for (const price of prices.value.values()) expect(Number.isInteger(price)).toBe(true);
    const list = catalogue.priceLists[0]!;
    const broken = (change: Record<string, string>) => ({
      ...catalogue,
      priceLists: [{ ...list, prices: { ...list.prices, ...change } }],
    });
    expect(additivePrices(broken({ [first('vessel')]: '12.50' }), list.id)).toMatchObject({
      error: { code: 'QUOTE_PRICE_NOT_WHOLE' },
    });
    expect(additivePrices({ ...catalogue, priceLists: [{ ...list, prices: {} }] }, list.id)).toMatchObject({
      error: { code: 'QUOTE_NO_PRICE' },
    });
    expect(additivePrices(catalogue, 'none')).toMatchObject({ error: { code: 'QUOTE_UNKNOWN_PRICE_LIST' } });
  });
});
