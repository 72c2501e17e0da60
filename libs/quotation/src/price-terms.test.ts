import { itemsOfSlot } from '@flangewise/catalogue';
import { pricedDemoCatalogue as catalogue } from '@flangewise/catalogue/prices';
import { type PriceList, readDocument, type System, type SystemInput, systemSchema } from '@flangewise/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { additivePrices } from './additive-prices.js';
import { alloySurchargeOf, weighingMaterialOf } from './alloy-surcharge.js';
import { makeOffer } from './make-offer.js';
import { Money, moneyText } from './money.js';
import { quantityPercentOf, quantityReductionOf } from './quantity-steps.js';

const list = catalogue.priceLists[0]!;
const cents = (text: string): bigint => BigInt(text.replace('.', ''));

const systemOf = (sets: SystemInput['sets'], offer: SystemInput['offer'] = {}): System => {
  const read = readDocument(systemSchema, {
    inquiry: { title: 'Terms', sets: (sets ?? []).map(() => ({})) },
    sets,
    offer,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

const offerOf = (system: System, lists: readonly PriceList[] = catalogue.priceLists) => {
  const made = makeOffer({
    system,
    catalogue: { ...catalogue, priceLists: [...lists] },
    ruleRevision: 'r',
  });
  if (!made.ok) throw new Error(made.error.message);
  return made.value.offer;
};

describe('alloy surcharge', () => {
  const vessel = itemsOfSlot(catalogue, 'vessel').find(({ id }) => id === 'VS-2008')!;

  test('is the mass times the rate of the material, in whole units', () => {
    const priced = (massKg: number, perKg: string) =>
      alloySurchargeOf(
        { alloySurcharges: [{ material: 'alloy C-276', perKg }] },
        { ...vessel, massKg },
      ).toFixed();
    expect(priced(6.3351, '9.80')).toBe('62');
    expect(priced(2.5, '1.00')).toBe('3');
    expect(priced(2.4999, '1.00')).toBe('2');
  });

  test('counts what carries under a lining, and nothing without a rate', () => {
    const lined = itemsOfSlot(catalogue, 'vessel').find(({ carrier }) => carrier === '1.4404')!;
    expect(weighingMaterialOf(lined)).toBe('1.4404');
    expect(weighingMaterialOf(vessel)).toBe('alloy C-276');
    expect(alloySurchargeOf({}, vessel).isZero()).toBe(true);
    expect(alloySurchargeOf({ alloySurcharges: [{ material: 'gold', perKg: '9' }] }, vessel).isZero()).toBe(
      true,
    );
  });

  test('is in the price that a search adds and in the unit price of the position, told by material', () => {
    const prices = additivePrices(catalogue, list.id);
    if (!prices.ok) throw new Error(prices.error.message);
    const surcharge = alloySurchargeOf(list, vessel);
    expect(surcharge.gt(0)).toBe(true);
    expect(prices.value.get(vessel.id)).toBe(Number(list.prices[vessel.id]) + surcharge.toNumber());
    const offer = offerOf(systemOf([{ count: 2, choices: { vessel: vessel.id } }]));
    expect(offer.positions[0]).toMatchObject({
      unitPrice: moneyText(new Money(prices.value.get(vessel.id)!)),
      note: `Alloy surcharge ${moneyText(surcharge)} each included`,
    });
    expect(offer.alloySurcharges).toEqual([
      {
        material: 'alloy C-276',
        massKg: 2 * vessel.massKg,
        perKg: '9.80',
        amount: moneyText(surcharge.times(2)),
      },
    ]);
  });

  test('what a search adds up is the list total of the offer, whatever is chosen', () => {
    const prices = additivePrices(catalogue, list.id);
    if (!prices.ok) throw new Error(prices.error.message);
    const oneOf = (slot: 'vessel' | 'cover' | 'stirrer' | 'seal') =>
      fc.constantFrom(...itemsOfSlot(catalogue, slot).map(({ id }) => id));
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            count: fc.integer({ min: 1, max: 20 }),
            choices: fc.record({
              vessel: oneOf('vessel'),
              cover: oneOf('cover'),
              stirrer: oneOf('stirrer'),
              seal: oneOf('seal'),
            }),
          }),
          { minLength: 1, maxLength: 3 },
        ),
        (sets) => {
          const added = sets.reduce(
            (sum, { count, choices }) =>
              sum + count * Object.values(choices).reduce((one, id) => one + prices.value.get(id)!, 0),
            0,
          );
          expect(offerOf(systemOf(sets)).listTotal).toBe(`${String(added)}.00`);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('quantity steps', () => {
  test('the highest that is reached counts, from its first piece on', () => {
    const percentAt = (quantity: number) => quantityPercentOf(list, quantity).toString();
    expect([1, 3, 4, 7, 8, 15, 16, 99].map(percentAt)).toEqual(['0', '0', '2', '2', '4', '4', '6', '6']);
    expect(quantityPercentOf({}, 99).isZero()).toBe(true);
  });

  test('a reduction is never more than its share by more than half a cent', () => {
    fc.assert(
      fc.property(fc.bigInt(0n, 10n ** 10n), fc.integer({ min: 1, max: 60 }), (amount, quantity) => {
        const total = new Money(amount.toString()).div(100);
        const exact = total.times(quantityPercentOf(list, quantity)).div(100);
        const reduction = quantityReductionOf(list, { quantity, total });
        expect(reduction.minus(exact).abs().lte('0.005')).toBe(true);
        expect(reduction.decimalPlaces()).toBeLessThanOrEqual(2);
      }),
    );
  });

  test('stand in the offer after the list total and before the discount', () => {
    const offer = offerOf(systemOf([{ count: 4, choices: { vessel: 'VS-1002' } }], { discountPercent: '5' }));
    const [step] = offer.quantitySteps!;
    expect(step!.text).toBe('4 × Vessel 12 mL, 1.4404, PS 150: 2 % off');
    const net = cents(offer.listTotal) + cents(step!.amount) - cents(offer.discount);
    expect(cents(offer.net)).toBe(net);
    const base = new Money(offer.listTotal).plus(step!.amount);
    expect(offer.discount).toBe(moneyText(base.times('0.05').toDecimalPlaces(2)));
  });
});

describe('services', () => {
  const choices = [{ choices: { vessel: 'VS-1002' } }];

  test('are charged at the rate of the list, without discount', () => {
    const plain = offerOf(systemOf(choices, { discountPercent: '5' }));
    const offer = offerOf(
      systemOf(choices, {
        discountPercent: '5',
        services: [
          { service: 'commissioning', quantity: 2 },
          { service: 'engineering', quantity: 1.5 },
        ],
      }),
    );
    expect(offer.services).toEqual([
      { text: 'Commissioning on site, 2 days at 1480.00', amount: '2960.00' },
      { text: 'Engineering beyond the offer, 1.5 hours at 145.00', amount: '217.50' },
    ]);
    expect(offer.discount).toBe(plain.discount);
    expect(cents(offer.net)).toBe(cents(plain.net) + 296000n + 21750n);
  });

  test('one without a rate is refused with those that there are', () => {
    const made = makeOffer({
      system: systemOf(choices, { services: [{ service: 'catering', quantity: 1 }] }),
      catalogue,
      ruleRevision: 'r',
    });
    expect(made).toMatchObject({
      ok: false,
      error: {
        code: 'QUOTE_UNKNOWN_SERVICE',
        path: 'offer.services[0].service',
        message: expect.stringMatching(
          /catering given; 2026-11-EUR has engineering, commissioning/,
        ) as string,
      },
    });
  });
});
