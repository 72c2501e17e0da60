import { slotNames } from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import { demoCatalogue } from './demo-catalogue.js';
import { envelopeOf } from './envelope.js';
import { itemById, itemsOfSlot } from './find-items.js';
import { itemLifeTroubles } from './item-life-troubles.js';
import data from './data/trade-facts.json' with { type: 'json' };
import { tradeFactsOf, tradeFactsSchema } from './trade-facts.js';

const item = (id: string) => itemById(demoCatalogue, id)!;
const troublesOf = (change: object, other: object = {}) =>
  itemLifeTroubles([
    { ...item('SE-1001'), ...change },
    { ...item('SE-1002'), ...other },
    item('VS-1001'),
  ]).map(({ path, message }) => `${path}: ${message}`);

describe('lives of items', () => {
  test('the range has items in every state, and all that they name is there', () => {
    const lives = new Set(demoCatalogue.items.map(({ life }) => life));
    expect([...lives].sort()).toEqual(['current', 'discontinued', 'introduced', 'to be discontinued']);
    expect(itemLifeTroubles(demoCatalogue.items)).toEqual([]);
  });

  test('a successor has to be another item of the slot that is sold', () => {
    expect(troublesOf({ successor: 'SE-1002' })).toEqual([]);
    expect(troublesOf({ successor: 'SE-9999' })[0]).toMatch(/items\[0\]\.successor: there is no item/);
    expect(troublesOf({ successor: 'SE-1001' })[0]).toMatch(/does not follow or replace itself/);
    expect(troublesOf({ successor: 'VS-1001' })[0]).toMatch(/belongs to vessel; an item of seal is allowed/);
    expect(troublesOf({ alternatives: ['SE-1002'] }, { life: 'discontinued' })[0]).toMatch(
      /items\[0\]\.alternatives\[0\]: .* is discontinued itself/,
    );
  });

  test('what goes names its successor, and no life ends before it begins', () => {
    expect(troublesOf({ life: 'to be discontinued' })[0]).toMatch(/items\[0\]\.life: .*names its successor/);
    expect(troublesOf({ validFrom: '2027-01-01', validUntil: '2026-12-31' })[0]).toMatch(
      /items\[0\]\.validUntil: ends before it begins \(2027-01-01\)/,
    );
  });
});

describe('customs and classification', () => {
  test('the table passes its schema and knows slots alone', () => {
    const { slots } = tradeFactsSchema.parse(data);
    for (const slot of Object.keys(slots)) expect(slotNames).toContain(slot);
  });

  test('every item that is goods has a tariff number, and what it says of itself goes before', () => {
    const papers = ['material', 'certificates', 'qualification'];
    for (const one of demoCatalogue.items)
      expect(tradeFactsOf(one) === undefined, one.id).toBe(papers.includes(one.slot));
    expect(tradeFactsOf(item('PG-2001'))).toEqual({
      tariffNumber: '9026.20',
      originCountry: 'NL',
      unspsc: '41112400',
    });
    expect(tradeFactsOf({ ...item('PG-2001'), originCountry: 'DE' })?.originCountry).toBe('DE');
  });
});

describe('envelopes', () => {
  test('follow from the dimensions, unless the item says its own', () => {
    const vessel = itemsOfSlot(demoCatalogue, 'vessel').find(({ id }) => id === 'VS-2006')!;
    const { flangeOuterDiameterM, endThicknessM } = vessel.geometry;
    expect(envelopeOf(vessel)).toEqual({
      lengthM: flangeOuterDiameterM,
      widthM: flangeOuterDiameterM,
      heightM: vessel.depthM + endThicknessM,
    });
    expect(envelopeOf(item('CI-1001'))).toBeUndefined();
    const own = { lengthM: 0.3, widthM: 0.2, heightM: 0.5 };
    expect(envelopeOf({ ...item('CI-1001'), envelope: own })).toEqual(own);
  });
});
