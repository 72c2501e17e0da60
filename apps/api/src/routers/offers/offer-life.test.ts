import { createHash } from 'node:crypto';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { startProduct } from '../../http/test-product.js';
import { quickWorkers } from '../../workshop/quick-workers.js';
import { runHere } from '../../workshop/run-here.js';
import { makeTestOffer, quickInquiry, startJob, type TestJob, testInquiry, unblock } from '../test-job.js';

vi.setConfig({ testTimeout: 60_000 });

const product = await startProduct(afterAll, { runJob: runHere(quickWorkers()) });
const { ask, call, get, database } = product;
let job: TestJob;
beforeAll(async () => {
  job = await startJob(product);
});

const reason = async (...asked: Parameters<typeof call>) => {
  const { status, error } = await call(...asked);
  return [status, error?.data.reason];
};

/** Everything that a revision says, its documents included, as one figure. */
async function digestOf(id: string, revision: string): Promise<string> {
  const { offer, documents, blocking } = await ask('engineer', 'offers.get', { id, revision });
  const hash = createHash('sha256')
    .update(JSON.stringify({ ...offer, state: '' }))
    .update(JSON.stringify(blocking));
  for (const { name } of documents)
    hash.update(
      (await get('engineer', `/api/offers/${id}/documents/${name}?revision=${revision}`)).rawPayload,
    );
  return hash.digest('hex');
}

it('keeps what was sent for good, whatever is changed and revised after it', async () => {
  const id = await makeTestOffer(product, job.systemId);
  await unblock(product, id);
  await ask('sales', 'offers.send', { id });
  const sent = await digestOf(id, 'A');

  const sets = job.system.sets?.map((set) => ({ ...set, label: 'changed' }));
  await ask('engineer', 'systems.save', {
    id: job.systemId,
    document: { ...job.system, sets },
    version: 1,
  });
  const revised = await ask('sales', 'offers.revise', { id, discountPercent: '2', date: '2026-12-01' });
  expect(revised.revision).toBe('B');
  expect(await digestOf(id, 'A')).toBe(sent);
  expect(await digestOf(id, 'B')).not.toBe(sent);

  const now = await ask('engineer', 'offers.get', { id });
  expect(now.offer).toMatchObject({ revision: 'B', date: '2026-12-01', discountPercent: '2' });
  expect(
    now.revisions.map((one: { revision: string; state: string; systemRevision: number }) => [
      one.revision,
      one.state,
      one.systemRevision,
    ]),
  ).toEqual([
    ['B', now.state, 2],
    ['A', 'sent', 1],
  ]);
  for (const one of now.revisions)
    expect(one).toMatchObject({
      priceList: '2026-11-EUR',
      catalogueRevision: product.workshop.catalogue.revision,
      ruleRevision: expect.stringMatching(/./),
      author: expect.stringMatching(/./),
      createdAt: expect.stringMatching(/^\d{4}-/),
    });

  await unblock(product, id);
  await ask('engineer', 'offers.send', { id });
  const { revisions } = await ask('engineer', 'offers.get', { id });
  expect(revisions.map((one: { state: string }) => one.state)).toEqual(['sent', 'replaced']);
  expect(await digestOf(id, 'A')).toBe(sent);
});

it('ranks and offers in the currency that the inquiry asks for', async () => {
  const document = { ...testInquiry(quickInquiry), commercial: { currency: 'GBP' as const } };
  const { id: inquiryId } = await ask('engineer', 'inquiries.create', { document });
  const { candidates } = await ask('engineer', 'systems.solve', { inquiryId, most: 1 });
  const { system, price } = candidates[0];
  const { id: systemId } = await ask('engineer', 'systems.create', { inquiryId, system });
  const { offer } = await ask('engineer', 'offers.get', { id: await makeTestOffer(product, systemId) });
  expect(offer).toMatchObject({ currency: 'GBP', priceList: '2026-11-GBP', listTotal: price });
  const { prices, priceList } = await ask('engineer', 'catalogue.get', { currency: 'GBP' });
  expect(priceList).toEqual({ id: '2026-11-GBP', currency: 'GBP' });
  expect(String(prices[system.frame.frame])).toBe(
    product.workshop.priceListFor({ inquiry: document }).prices[system.frame.frame],
  );
});

it('prices a system by the list that it names, as the command line does, and refuses one that is not there', async () => {
  const named = (priceList: string) => ({ ...job.system, offer: { priceList } });
  const given = { inquiryId: job.inquiryId, system: named('2026-11-GBP') };
  const { id: systemId } = await ask('engineer', 'systems.create', given);
  const { offer } = await ask('engineer', 'offers.get', { id: await makeTestOffer(product, systemId) });
  expect(offer).toMatchObject({ currency: 'GBP', priceList: '2026-11-GBP' });
  const { priceList } = await ask('engineer', 'catalogue.get', { priceList: '2026-11-GBP', currency: 'EUR' });
  expect(priceList).toEqual({ id: '2026-11-GBP', currency: 'GBP' });

  const unknown = named('1999');
  const before = await database.system.count();
  const refused = [
    await call('engineer', 'systems.create', { inquiryId: job.inquiryId, system: unknown }),
    await call('engineer', 'systems.save', { id: systemId, document: unknown, version: 1 }),
    await call('engineer', 'systems.explain', { system: unknown }),
    await call('engineer', 'catalogue.get', { priceList: '1999' }),
  ];
  for (const { status, error } of refused) {
    expect([status, error?.data.reason]).toEqual([422, 'PRICE_LIST_UNKNOWN']);
    expect(error?.data.fields).toMatchObject([{ field: 'offer.priceList', given: '1999' }]);
    expect(error?.message).toMatch(/there are 2026-11-EUR, 2026-11-GBP/);
  }
  expect(await database.system.count()).toBe(before);
});

it('offers with the discount and tax that the system names, as the command line does, where nobody gives others', async () => {
  const system = { ...job.system, offer: { discountPercent: '3', taxPercent: '7' } };
  const { id: systemId } = await ask('engineer', 'systems.create', { inquiryId: job.inquiryId, system });
  const named = await ask('engineer', 'offers.get', { id: await makeTestOffer(product, systemId) });
  expect(named.offer).toMatchObject({ discountPercent: '3', taxPercent: '7' });
  const given = await makeTestOffer(product, systemId, { discountPercent: '0' });
  const { offer } = await ask('engineer', 'offers.get', { id: given });
  expect(offer).toMatchObject({ discountPercent: '0', taxPercent: '7' });
});

it('offers at no date after the end of the price list', async () => {
  const before = await database.offer.count();
  const late = await call('engineer', 'offers.create', { systemId: job.systemId, date: '2027-05-01' });
  expect([late.status, late.error?.data.details]).toEqual([422, { code: 'QUOTE_PRICE_LIST_ENDED' }]);
  expect(late.error?.message).toMatch(/2027-05-01 given.*2027-04-30/);
  expect(await database.offer.count()).toBe(before);
});

it('lets the database itself refuse every change of what was sent', async () => {
  const id = await makeTestOffer(product, job.systemId);
  await unblock(product, id);
  await ask('engineer', 'offers.send', { id });
  const sent = await digestOf(id, 'A');
  const revision = { offerId: id };
  const file = { offerRevision: revision };
  for (const change of [
    () => database.offerRevision.updateMany({ where: revision, data: { priceList: 'x' } }),
    () => database.offerRevision.updateMany({ where: revision, data: { state: 'draft' } }),
    () => database.offerRevision.deleteMany({ where: revision }),
    () => database.offerFile.updateMany({ where: file, data: { name: 'x' } }),
    () => database.offerFile.deleteMany({ where: file }),
  ])
    await expect(change()).rejects.toThrow();
  expect(await digestOf(id, 'A')).toBe(sent);
  expect(await reason('engineer', 'offers.send', { id })).toEqual([409, 'OFFER_ALREADY_SENT']);
  expect(await reason('approver', 'offers.release', { id, what: 'discount', note: 'x' })).toEqual([
    409,
    'OFFER_ALREADY_SENT',
  ]);
});

it('holds back what the assessment speaks against', async () => {
  const id = await makeTestOffer(product, job.systemId);
  const { blocking } = await ask('engineer', 'offers.get', { id });
  expect(blocking.length).toBeGreaterThan(0);
  const { status, error } = await call('engineer', 'offers.send', { id });
  expect([status, error?.data.reason]).toEqual([409, 'OFFER_BLOCKED']);
  expect(error?.data.details).toEqual({ blocking });
});

it('sends a high discount only after an approver released it', async () => {
  const id = await makeTestOffer(product, job.systemId, { discountPercent: '10' });
  const before = await ask('engineer', 'offers.get', { id });
  expect(before).toMatchObject({
    state: 'in_review',
    waitsFor: ['discount'],
    offer: { watermark: 'NOT RELEASED' },
  });
  expect(before.blocking).toContain('A discount of 10 % needs the release of an approver.');
  expect(await reason('approver', 'offers.release', { id, what: 'special', note: 'x' })).toEqual([
    409,
    'NOTHING_TO_RELEASE',
  ]);
  const released = await ask('approver', 'offers.release', { id, what: 'discount', note: 'Second order' });
  expect(released.waitsFor).toEqual([]);
  expect(released.blocking).toEqual(before.blocking.slice(0, -1));
  const after = await ask('engineer', 'offers.get', { id });
  expect(after.state).toBe('draft');
  expect(after.releases).toEqual([
    { what: 'discount', note: 'Second order', by: 'Marit Oswaldine', at: expect.any(String) },
  ]);
  expect(await reason('approver', 'offers.release', { id, what: 'discount', note: 'x' })).toEqual([
    409,
    'NOTHING_TO_RELEASE',
  ]);
  await expect(database.offerRelease.updateMany({ data: { note: 'x' } })).rejects.toThrow();
});

it('asks for the release anew in a new letter, and drops the letter that was not sent', async () => {
  const id = await makeTestOffer(product, job.systemId, { discountPercent: '10' });
  await ask('approver', 'offers.release', { id, what: 'discount', note: 'Once' });
  await ask('engineer', 'offers.revise', { id });
  const { revision, waitsFor, revisions } = await ask('engineer', 'offers.get', { id });
  expect([revision, waitsFor]).toEqual(['B', ['discount']]);
  expect(revisions.map((one: { state: string }) => one.state)).toEqual(['in_review', 'replaced']);
});

it('writes one letter when two are asked for at once', async () => {
  const id = await makeTestOffer(product, job.systemId);
  const answers = await Promise.all([1, 2].map(() => call('engineer', 'offers.revise', { id })));
  expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
  expect(await database.offerRevision.count({ where: { offerId: id } })).toBe(2);
});

it('takes the watermark off a special that was released', async () => {
  const special = await startJob(product, { inquiry: '06-high-pressure.json' });
  const id = await makeTestOffer(product, special.systemId);
  const before = await ask('engineer', 'offers.get', { id });
  expect(before.waitsFor).toEqual(['special']);
  const released = await ask('approver', 'offers.release', { id, what: 'special', note: 'Reviewed' });
  expect(released.blocking.length).toBeLessThan(before.blocking.length);
  expect(released.blocking.filter((sentence: string) => sentence.includes('to be released'))).toEqual([]);
});

it('refuses a discount that nobody can release, and a percentage that is none', async () => {
  const asked = { systemId: job.systemId, date: '2026-11-24' };
  const high = await call('engineer', 'offers.create', { ...asked, discountPercent: '60' });
  expect([high.status, high.error?.data.reason, high.error?.data.details]).toEqual([
    422,
    'OFFER_NOT_POSSIBLE',
    { code: 'QUOTE_DISCOUNT_TOO_HIGH' },
  ]);
  const odd = await call('engineer', 'offers.create', { ...asked, discountPercent: 'half' });
  expect(odd.error?.data.fields?.[0]?.field).toBe('discountPercent');
});
