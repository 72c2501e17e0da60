import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Catalogue, Item } from '@flangewise/model';
import { afterEach, afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { startProduct } from '../../http/test-product.js';
import { quickWorkers } from '../../workshop/quick-workers.js';
import { runHere } from '../../workshop/run-here.js';
import { makeTestOffer, startJob, type TestJob, unblock } from '../test-job.js';

vi.setConfig({ testTimeout: 60_000 });

const product = await startProduct(afterAll, { runJob: runHere(quickWorkers()) });
const { ask, call, database } = product;
const shipped = pricedDemoCatalogue;
const firstItem = shipped.items[0] as Item;
const firstList = shipped.priceLists[0] as Catalogue['priceLists'][number];
let job: TestJob;
beforeAll(async () => {
  job = await startJob(product);
});

interface Draft {
  readonly id: string;
  readonly version: number;
}

const openDraft = async (): Promise<Draft> => (await ask('keeper', 'catalogue.openDraft', {})).revision;

const seen = ({ id: draftId, version }: Draft) => ({ draftId, version });

const catalogueOf = async ({ id }: Draft): Promise<Catalogue> =>
  (await ask('sales', 'catalogue.getRevision', { id })).revision.catalogue;

const save = async (draft: Draft, item: unknown): Promise<Draft> => ({
  ...draft,
  version: (await ask('keeper', 'catalogue.saveItem', { ...seen(draft), item })).version,
});

const release = (draft: Draft, note = 'Test') => ask('keeper', 'catalogue.release', { ...draft, note });

const reason = async (...asked: Parameters<typeof call>) => {
  const { status, error } = await call(...asked);
  return [status, error?.data.reason];
};

/** Every row of the catalogue and what hangs on it. */
const everything = async () => ({
  revisions: await database.catalogueRevision.findMany({ orderBy: { id: 'asc' } }),
  items: await database.catalogueItem.findMany({ orderBy: [{ revisionId: 'asc' }, { id: 'asc' }] }),
  changes: await database.catalogueChange.findMany({ orderBy: { id: 'asc' } }),
});

/** Each test finds no draft open. */
afterEach(async () => {
  const draft = await database.catalogueRevision.findFirst({ where: { state: 'draft' } });
  if (draft !== null) await ask('keeper', 'catalogue.discardDraft', { id: draft.id, version: draft.version });
});

describe('a draft', () => {
  it('begins as a copy of the catalogue in force, and is one for all', async () => {
    const draft = await openDraft();
    expect(draft).toMatchObject({
      name: expect.stringMatching(/^draft \d+$/),
      state: 'draft',
      items: shipped.items.length,
      author: 'Teodor Brask',
      isCurrent: false,
      version: 1,
    });
    const { revision, ...content } = await catalogueOf(draft);
    expect(revision).toMatch(/^draft/);
    expect(JSON.stringify({ revision: shipped.revision, ...content })).toBe(JSON.stringify(shipped));
    const others = await Promise.all([1, 2, 3].map(openDraft));
    expect(others.map(({ id }) => id)).toEqual([draft.id, draft.id, draft.id]);
  });

  it('is listed with the catalogue that it began at', async () => {
    const draft = await openDraft();
    const { revisions } = await ask('approver', 'catalogue.listRevisions');
    const inForce = revisions.find((one: { isCurrent: boolean }) => one.isCurrent);
    expect(revisions[0]).toMatchObject({ id: draft.id, basedOn: inForce.name });
  });

  it('takes changed, new and removed items, and says in its history who did what', async () => {
    let draft = await openDraft();
    draft = await save(draft, { ...firstItem, name: 'Another name' });
    draft = await save(draft, { ...firstItem, id: 'VS-9998' });
    const { version, troubles } = await ask('keeper', 'catalogue.removeItem', {
      ...seen(draft),
      itemId: 'VS-9998',
    });
    expect([version, troubles]).toEqual([4, []]);
    const { items } = await catalogueOf(draft);
    expect(items[0]).toEqual({ ...firstItem, name: 'Another name' });
    expect(items.length).toBe(shipped.items.length);
    const { changes } = await ask('engineer', 'catalogue.listChanges', { id: draft.id });
    expect(changes).toMatchObject([
      { version: 4, action: 'item_removed', subject: 'VS-9998', before: { id: 'VS-9998' }, after: null },
      { version: 3, action: 'item_saved', subject: 'VS-9998', before: null },
      {
        ...{ version: 2, action: 'item_saved', subject: firstItem.id, author: 'Teodor Brask' },
        before: { name: firstItem.name },
        after: { name: 'Another name' },
      },
      { version: 1, action: 'opened', subject: null },
    ]);
  });

  it('keeps an item in full, defaults included, and takes the same item twice as nothing', async () => {
    const { life: _, portsM: __, ...bare } = firstItem;
    const draft = await openDraft();
    expect((await save(draft, bare)).version).toBe(draft.version);
    const named = await save(draft, { ...bare, name: 'Bare' });
    expect((await catalogueOf(named)).items[0]).toEqual({ ...firstItem, name: 'Bare' });
  });

  it('removes the prices of an item with it', async () => {
    const draft = await openDraft();
    await ask('keeper', 'catalogue.removeItem', { ...seen(draft), itemId: firstItem.id });
    for (const { prices } of (await catalogueOf(draft)).priceLists)
      expect(prices).not.toHaveProperty(firstItem.id);
  });

  it('takes a price list, and keeps of it in the history the prices that changed', async () => {
    const draft = await openDraft();
    const priceList = { ...firstList, prices: { ...firstList.prices, [firstItem.id]: '77777' } };
    const saved = await ask('keeper', 'catalogue.savePriceList', { ...seen(draft), priceList });
    expect(saved).toEqual({ version: 2, troubles: [] });
    const { priceLists } = await catalogueOf(draft);
    expect(priceLists).toEqual([priceList, ...shipped.priceLists.slice(1)]);
    const { changes } = await ask('keeper', 'catalogue.listChanges', { id: draft.id });
    expect(changes[0]).toMatchObject({ action: 'price_list_saved', subject: firstList.id });
    expect(changes[0].after.prices).toEqual({ [firstItem.id]: '77777' });
    expect(changes[0].before.prices).toEqual({ [firstItem.id]: firstList.prices[firstItem.id] });
  });

  it('lets one of two keepers through who saw the same version', async () => {
    const draft = await openDraft();
    const names = ['a', 'b', 'c'];
    const answers = await Promise.all(
      names.map((name) =>
        call('keeper', 'catalogue.saveItem', { ...seen(draft), item: { ...firstItem, name } }),
      ),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409, 409]);
    const late = answers.find(({ status }) => status === 409);
    expect(late?.error?.data.reason).toBe('CHANGED_MEANWHILE');
    expect(late?.error?.message).toContain('you saw version 1, it is now version 2');
  });

  it('that is discarded is given up for good', async () => {
    const draft = await openDraft();
    await ask('keeper', 'catalogue.discardDraft', draft);
    expect(await reason('keeper', 'catalogue.saveItem', { ...seen(draft), item: firstItem })).toEqual([
      409,
      'CATALOGUE_NO_DRAFT',
    ]);
    expect((await openDraft()).id).not.toBe(draft.id);
  });
});

describe('bad input', () => {
  it.each([
    [{ ...firstItem, massKg: 'heavy' }, 'item.massKg', '"heavy"', /number/],
    [{ ...firstItem, colour: 'red' }, 'item.colour', '"red"', /no such field; allowed are/],
    [{ ...firstItem, id: 'vessel' }, 'item.id', '"vessel"', /./],
    [{ ...firstItem, slot: 'boat' }, 'item.slot', '"boat"', /vessel/],
    [null, 'item', 'null', /object/],
  ])(
    'of an item changes nothing and names field, value and what is allowed (%#)',
    async (item, field, given, allowed) => {
      const draft = await openDraft();
      const before = await everything();
      const { status, error } = await call('keeper', 'catalogue.saveItem', { ...seen(draft), item });
      expect([status, error?.data.reason]).toEqual([400, 'INPUT_NOT_VALID']);
      const trouble = error?.data.fields?.find((one) => one.field === field);
      expect(trouble?.given).toBe(given);
      expect(trouble?.problem).toMatch(allowed);
      expect(await everything()).toEqual(before);
    },
  );

  it('of a price list changes nothing and names field, value and what is allowed', async () => {
    const draft = await openDraft();
    const before = await everything();
    const withPrice = (id: string, price: string) => ({ ...firstList, prices: { [id]: price } });
    for (const [priceList, field, given, allowed] of [
      [withPrice('ZZ-9999', '10'), 'priceList.prices.ZZ-9999', '"10"', /no item of this number/],
      [withPrice(firstItem.id, '10.5'), `priceList.prices.${firstItem.id}`, '"10.5"', /./],
      [{ ...firstList, validUntil: '2020-01-01' }, 'priceList.validUntil', '2020-01-01', /before it begins/],
      [{ ...firstList, currency: 'FF' }, 'priceList.currency', '"FF"', /EUR/],
    ] as const) {
      const { status, error } = await call('keeper', 'catalogue.savePriceList', {
        ...seen(draft),
        priceList,
      });
      expect([status, error?.data.reason]).toEqual([400, 'INPUT_NOT_VALID']);
      expect(error?.data.fields?.[0]).toMatchObject({
        field,
        given,
        problem: expect.stringMatching(allowed),
      });
    }
    expect(await everything()).toEqual(before);
  });

  it('of an id or a version changes nothing', async () => {
    const draft = await openDraft();
    const before = await everything();
    const removal = { ...seen(draft), itemId: 'ZZ-9999' };
    expect(await reason('keeper', 'catalogue.removeItem', removal)).toEqual([404, 'NOT_FOUND']);
    expect(await reason('keeper', 'catalogue.removeItem', { ...removal, draftId: 'none' })).toEqual([
      404,
      'NOT_FOUND',
    ]);
    expect(await reason('keeper', 'catalogue.removeItem', { ...removal, version: 0 })).toEqual([
      400,
      'INPUT_NOT_VALID',
    ]);
    expect(await reason('keeper', 'catalogue.release', { ...draft, note: ' ' })).toEqual([
      400,
      'INPUT_NOT_VALID',
    ]);
    expect(await everything()).toEqual(before);
  });
});

describe('a release', () => {
  it('is in force for the next who asks, under a name of its own, and changes no more', async () => {
    const draft = await save(await openDraft(), { ...firstItem, name: 'Renamed' });
    const { name } = await release(draft, 'A new name');
    expect(name).toMatch(/^\d{4}-\d{2}-[0-9a-f]{8}$/);
    const now = await ask('kelmoor', 'catalogue.get');
    expect(now.revision).toBe(name);
    expect(now.items[0].name).toBe('Renamed');
    const before = await everything();
    for (const [path, input] of [
      ['catalogue.saveItem', { ...seen(draft), item: firstItem }],
      ['catalogue.removeItem', { ...seen(draft), itemId: firstItem.id }],
      ['catalogue.savePriceList', { ...seen(draft), priceList: firstList }],
      ['catalogue.discardDraft', draft],
      ['catalogue.release', { ...draft, note: 'Again' }],
      [
        'catalogue.importFile',
        {
          ...seen(draft),
          format: 'json',
          contentBase64: Buffer.from(JSON.stringify(shipped)).toString('base64'),
          apply: true,
        },
      ],
    ] as const)
      expect(await reason('keeper', path, input)).toEqual([409, 'CATALOGUE_NO_DRAFT']);
    expect(await everything()).toEqual(before);
  });

  it('is given once where two ask at once', async () => {
    const draft = await openDraft();
    const answers = await Promise.all(
      [1, 2].map(() => call('keeper', 'catalogue.release', { ...draft, note: 'x' })),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
  });

  it('waits while systems use an item that is gone, and says which', async () => {
    const { vessel } = job.system.sets?.[0]?.choices ?? {};
    const draft = await openDraft();
    const removed = await ask('keeper', 'catalogue.removeItem', { ...seen(draft), itemId: vessel });
    expect(removed.troubles).toMatchObject([{ path: vessel, message: expect.stringContaining('system A') }]);
    const check = await ask('keeper', 'catalogue.checkDraft', { id: draft.id });
    expect(check.missedItems).toMatchObject([{ item: vessel, usedBy: [{ systemId: job.systemId }] }]);
    const { status, error } = await call('keeper', 'catalogue.release', {
      ...{ id: draft.id, version: removed.version },
      note: 'x',
    });
    expect([status, error?.data.reason]).toEqual([409, 'CATALOGUE_NOT_RELEASABLE']);
    expect(error?.data.details).toEqual({ hindrances: check.hindrances });
    expect(check.hindrances).toEqual([
      expect.stringMatching(new RegExp(`${vessel} is gone .* inquiry 0001`)),
    ]);
    await database.inquiry.update({ where: { id: job.inquiryId }, data: { state: 'closed' } });
    expect((await ask('keeper', 'catalogue.checkDraft', { id: draft.id })).hindrances).toEqual([]);
    await database.inquiry.update({ where: { id: job.inquiryId }, data: { state: 'open' } });
  });

  it('waits while there is nothing for a slot that every system needs, and so does an audit', async () => {
    const frames = shipped.items.filter(({ slot }) => slot === 'frame');
    let draft = await openDraft();
    for (const frame of frames) draft = await save(draft, { ...frame, life: 'discontinued' });
    const { hindrances } = await ask('keeper', 'catalogue.checkDraft', { id: draft.id });
    expect(hindrances).toEqual([expect.stringContaining('There is nothing for Frame')]);
    expect(await reason('keeper', 'catalogue.release', { ...draft, note: 'x' })).toEqual([
      409,
      'CATALOGUE_NOT_RELEASABLE',
    ]);
    const { status, error } = await call('keeper', 'catalogue.audit', { id: draft.id });
    expect([status, error?.data.reason]).toEqual([422, 'CATALOGUE_INCOMPLETE']);
    expect(error?.message).toContain('Frame');
  });

  it('waits where another catalogue came into force after the draft was opened', async () => {
    const draft = await openDraft();
    const { id } = await database.catalogueRevision.create({
      data: { name: 'newer', maker: 'Averholt', priceLists: [], tables: {} },
    });
    await database.catalogueRevision.update({
      where: { id },
      data: { state: 'released', releasedAt: new Date() },
    });
    const { overtakenBy, hindrances } = await ask('keeper', 'catalogue.checkDraft', { id: draft.id });
    expect(overtakenBy).toBe('newer');
    expect(hindrances[0]).toContain('newer came into force');
    expect(await reason('keeper', 'catalogue.release', { ...draft, note: 'x' })).toEqual([
      409,
      'CATALOGUE_NOT_RELEASABLE',
    ]);
    await ask('keeper', 'catalogue.discardDraft', draft);
    // Back to the range: the empty one was a means of this test.
    const next = await openDraft();
    const imported = await ask('keeper', 'catalogue.importFile', {
      ...{ ...seen(next), format: 'json', apply: true },
      contentBase64: Buffer.from(JSON.stringify(shipped)).toString('base64'),
    });
    await release({ id: next.id, version: imported.version });
  });
});

describe('an offer', () => {
  it('keeps the catalogue that it was made by, which can be read when it is no longer in force', async () => {
    const own = await startJob(product);
    const id = await makeTestOffer(product, own.systemId);
    const before = await ask('engineer', 'offers.get', { id });
    const { catalogueRevision } = before.offer;
    const frozen = await ask('engineer', 'systems.getRevision', { id: own.systemId, number: 1 });
    expect(frozen).toMatchObject({ catalogueRevision, document: { sets: own.system.sets } });
    await unblock(product, id);

    const { vessel } = own.system.sets?.[0]?.choices ?? {};
    const old = await ask('engineer', 'catalogue.get', { revision: catalogueRevision });
    const item = old.items.find((one: Item) => one.id === vessel);
    const draft = await save(await openDraft(), { ...item, name: 'By another name' });
    const list = { ...firstList, prices: { ...firstList.prices, [String(vessel)]: '1' } };
    const { version } = await ask('keeper', 'catalogue.savePriceList', { ...seen(draft), priceList: list });

    const current = await database.catalogueRevision.findFirstOrThrow({ where: { name: catalogueRevision } });
    const compared = await ask('sales', 'catalogue.compare', { from: current.id, to: draft.id });
    expect(compared.changed).toMatchObject([{ id: vessel, fields: [{ path: 'name' }] }]);
    expect(compared.prices).toMatchObject([{ id: vessel, after: '1' }]);
    expect(compared.touchedOffers).toMatchObject([
      { id, number: before.number, letter: 'A', state: 'draft', system: 'A', items: [vessel] },
    ]);

    const { name } = await release({ id: draft.id, version });
    const after = await ask('engineer', 'offers.get', { id });
    expect(after.offer).toEqual(before.offer);
    const { status, error } = await call('sales', 'offers.send', { id });
    expect([status, error?.data.reason]).toEqual([409, 'OFFER_OUTDATED']);
    expect(error?.message).toContain(`catalogue ${catalogueRevision}`);
    expect(error?.message).toContain(`catalogue ${name}`);
    const again = await ask('engineer', 'catalogue.get', { revision: catalogueRevision });
    expect(again).toEqual(old);
    expect(await ask('sales', 'systems.getRevision', { id: own.systemId, number: 1 })).toEqual(frozen);
    expect(frozen.items.find((one: Item) => one.id === vessel)).toEqual(item);
    await ask('sales', 'offers.revise', { id, date: '2026-12-01' });
    const revised = await ask('engineer', 'offers.get', { id });
    expect(revised.offer).toMatchObject({ revision: 'B', catalogueRevision: name });
    expect(JSON.stringify(revised.offer.positions)).toContain('By another name');
  });

  it('of no catalogue that was released is not served by a draft', async () => {
    const draft = await openDraft();
    const { name } = await database.catalogueRevision.findUniqueOrThrow({ where: { id: draft.id } });
    for (const revision of [name, 'none'])
      expect(await reason('engineer', 'catalogue.get', { revision })).toEqual([404, 'NOT_FOUND']);
  });
});
