import { pricedDemoCatalogue as catalogue } from '@flangewise/catalogue/prices';
import { readDocument, type System, systemSchema } from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import { makeOffer } from './make-offer.js';

const systemWith = (seal: string, date?: string): System => {
  const read = readDocument(systemSchema, {
    inquiry: { title: 'Seal' },
    sets: [{ choices: { seal } }],
    ...(date === undefined ? {} : { offer: { date } }),
  });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

const offerOf = (seal: string, date?: string) => {
  const made = makeOffer({ system: systemWith(seal, date), catalogue, ruleRevision: 'r' });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
};

describe('an item that is about to go', () => {
  test('is offered with its last day and its successor', () => {
    expect(offerOf('SE-10501').offer.positions[0]!.note).toBe(
      'To be discontinued: sold until 2027-06-30, SE-1001 follows it',
    );
    expect(offerOf('SE-1001').offer.positions[0]!.note).toBeUndefined();
  });

  test('does not keep an offer from going out while it is sold', () => {
    expect(offerOf('SE-10501', '2026-12-01').blocking).toEqual([]);
  });
});

describe('a special', () => {
  test('says on its position how it differs from the range', () => {
    const item = { ...catalogue.items.find(({ id }) => id === 'SE-1001')!, id: 'SP-0001' };
    const made = makeOffer({
      system: systemWith('SP-0001'),
      catalogue,
      specials: [{ item, price: 100, deviations: ['ports N1 28 mm instead of 20 mm'] }],
      ruleRevision: 'r',
    });
    expect(made.ok && made.value.offer.positions[0]!.note).toBe(
      'Special, priced by method; outside the standard range; ports N1 28 mm instead of 20 mm',
    );
  });
});

describe('an item that is not sold yet', () => {
  test('keeps an offer of an earlier date from going out, from its first day on no longer', () => {
    const lateCatalogue = {
      ...catalogue,
      items: catalogue.items.map((item) =>
        item.id === 'SE-1001' ? { ...item, validFrom: '2027-01-01', validUntil: '2027-03-01' } : item,
      ),
    };
    const blockingOn = (date: string) => {
      const made = makeOffer({
        system: systemWith('SE-1001', date),
        catalogue: lateCatalogue,
        ruleRevision: 'r',
      });
      if (!made.ok) throw new Error(made.error.message);
      return made.value.blocking;
    };
    expect(blockingOn('2026-12-31')[0]).toMatch(/sold from 2027-01-01 on; the offer is dated 2026-12-31/);
    expect(blockingOn('2027-01-01')).toEqual([]);
    expect(blockingOn('2027-03-01')).toEqual([]);
    expect(blockingOn('2027-03-02')[0]).toMatch(/was sold until 2027-03-01/);
  });
});
