import { inflateRawSync } from 'node:zlib';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Catalogue } from '@flangewise/model';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { procedurePaths, startProduct } from '../http/test-product.js';
import { pdfTexts } from '../offers/pdf-text.js';
import { clientNames, quickInquiry, sendTestOffer, startJob, type TestJob, testInquiry } from './test-job.js';

/** The shipped range with prices that occur nowhere else: every item its own. */
const catalogueWith = (priceOf: (index: number) => number): Catalogue => ({
  ...pricedDemoCatalogue,
  priceLists: pricedDemoCatalogue.priceLists.map((list) => ({
    ...list,
    prices: Object.fromEntries(Object.keys(list.prices).map((item, index) => [item, String(priceOf(index))])),
  })),
});

const sentinelOf = (index: number): number => 20_345_671 + index * 10_007;
const sentinels = Object.keys(pricedDemoCatalogue.priceLists[0]?.prices ?? {}).map((_, index) =>
  String(sentinelOf(index)),
);
/** The sentinels in a text, however it groups digits. */
const sentinelsIn = (text: string): string[] => {
  const digits = text.replace(/(?<=\d)[\s,.'’\u2060]+(?=\d)/gu, '');
  return sentinels.filter((sentinel) => digits.includes(sentinel));
};

vi.setConfig({ testTimeout: 60_000 });

const product = await startProduct(afterAll, { catalogue: catalogueWith(sentinelOf) });
let job: TestJob;
let offerId: string;
let revisionId: string;

beforeAll(async () => {
  job = await startJob(product, { client: clientNames.sundrey });
  await product.ask('engineer', 'systems.freeze', { id: job.systemId });
  offerId = await sendTestOffer(product, job.systemId);
  revisionId = (await product.database.catalogueRevision.findFirstOrThrow()).id;
});

const conflicting = () => ({
  ...job.system,
  inquiry: {
    ...job.system.inquiry,
    process: { ...job.system.inquiry.process, pressure: { highest: '3000 bar' } },
  },
});

/** A call of every procedure as the customer whose inquiry it is. A procedure without a row fails the test below. */
const inputs: Readonly<Record<string, () => unknown>> = {
  'calculations.list': () => undefined,
  'calculations.run': () => ({ id: 'relief.criticalPressureRatio', inputs: { isentropicExponent: 1.4 } }),
  'catalogue.audit': () => ({ id: revisionId }),
  'catalogue.auditProgress': () => ({ id: revisionId }),
  'catalogue.checkDraft': () => ({ id: revisionId }),
  'catalogue.compare': () => ({ from: revisionId, to: revisionId }),
  'catalogue.discardDraft': () => ({ id: revisionId, version: 1 }),
  'catalogue.get': () => undefined,
  'catalogue.getRevision': () => ({ id: revisionId }),
  'catalogue.importFile': () => ({
    draftId: revisionId,
    version: 1,
    format: 'csv',
    contentBase64: '',
    apply: false,
  }),
  'catalogue.listChanges': () => ({ id: revisionId }),
  'catalogue.listRevisions': () => undefined,
  'catalogue.openDraft': () => ({}),
  'catalogue.release': () => ({ id: revisionId, version: 1, note: 'x' }),
  'catalogue.removeItem': () => ({ draftId: revisionId, version: 1, itemId: 'VS-1001' }),
  'catalogue.saveItem': () => ({ draftId: revisionId, version: 1, item: pricedDemoCatalogue.items[0] }),
  'catalogue.savePriceList': () => ({
    draftId: revisionId,
    version: 1,
    priceList: pricedDemoCatalogue.priceLists[0],
  }),
  'clients.list': () => undefined,
  'evidence.get': () => ({ systemId: job.systemId }),
  'health.get': () => undefined,
  'inquiries.check': () => ({ document: job.system.inquiry }),
  'inquiries.create': () => ({ document: testInquiry(quickInquiry) }),
  'inquiries.get': () => ({ id: job.inquiryId }),
  'inquiries.list': () => undefined,
  'inquiries.update': () => ({ id: job.inquiryId, document: testInquiry(quickInquiry) }),
  'offers.create': () => ({ systemId: job.systemId, date: '2026-11-24' }),
  'offers.get': () => ({ id: offerId }),
  'offers.list': () => ({}),
  'offers.release': () => ({ id: offerId, what: 'discount', note: 'x' }),
  'offers.revise': () => ({ id: offerId }),
  'offers.send': () => ({ id: offerId }),
  'session.me': () => undefined,
  'systems.assess': () => ({ system: job.system }),
  'systems.create': () => ({ inquiryId: job.inquiryId, system: job.system }),
  'systems.explain': () => ({ system: conflicting() }),
  'systems.freeze': () => ({ id: job.systemId }),
  'systems.get': () => ({ id: job.systemId }),
  'systems.getRevision': () => ({ id: job.systemId, number: 1 }),
  'systems.narrow': () => ({ system: job.system }),
  'systems.save': () => ({ id: job.systemId, document: job.system, version: 1 }),
  'systems.solve': () => ({ inquiryId: job.inquiryId }),
};

it('tries every procedure', () => {
  expect(Object.keys(inputs).sort()).toEqual([...procedurePaths].sort());
});

it('finds the prices where they are: with the engineer', async () => {
  for (const path of ['catalogue.get', 'offers.get']) {
    const { text } = await product.call('engineer', path, inputs[path]?.());
    expect(sentinelsIn(text).length).toBeGreaterThan(5);
  }
});

const priceKeys = /"(price|unitPrice|priceDifference|prices|cost|grossMargin)":(?!null)/;

it.each(Object.entries(inputs))('tells a customer no item price: %s', async (path, input) => {
  const { status, text } = await product.call('sundrey', path, input());
  expect([200, 403, 409]).toContain(status);
  expect(sentinelsIn(text)).toEqual([]);
  expect(text).not.toMatch(priceKeys);
});

/** Everything that can be read of a document. */
const readable = (name: string, content: Buffer): string => {
  if (name.endsWith('.pdf')) return pdfTexts(content).join('\n');
  if (!name.endsWith('.xlsx')) return content.toString('utf8');
  // The local entries of the archive (PKWARE APPNOTE §4.3.7), each deflated.
  return [...content.toString('latin1').matchAll(/PK\x03\x04/g)]
    .map(({ index }) => {
      const at = index + 30 + content.readUInt16LE(index + 26) + content.readUInt16LE(index + 28);
      return inflateRawSync(content.subarray(at), { finishFlush: 2 }).toString('utf8');
    })
    .join('\n');
};

it('prints item prices in the letter of the maker, and in no document that a customer gets', async () => {
  const url = (name: string) => `/api/offers/${offerId}/documents/${name}`;
  const ours = await product.get('engineer', url('offer.pdf'));
  expect(sentinelsIn(readable('offer.pdf', ours.rawPayload)).length).toBeGreaterThan(5);
  const { documents, offer } = await product.ask('sundrey', 'offers.get', { id: offerId });
  expect(documents).toHaveLength(6);
  for (const { name } of documents) {
    const theirs = await product.get('sundrey', url(name));
    expect(theirs.statusCode).toBe(200);
    const text = readable(name, theirs.rawPayload);
    expect(text).toContain(name.endsWith('.svg') ? 'svg' : offer.positions[0].name.slice(0, 8));
    expect(sentinelsIn(text)).toEqual([]);
  }
});

it.each(['csv', 'xlsx', 'json'])('sends a customer no catalogue as %s', async (format) => {
  const file = await product.get('sundrey', `/api/catalogue/${revisionId}/export.${format}`);
  expect(file.statusCode).toBe(403);
  expect(sentinelsIn(file.body)).toEqual([]);
});

it('answers a customer alike whatever the prices are', async () => {
  const other = await startProduct(afterAll, {
    catalogue: catalogueWith((index) => 30_000_000 - index * 997),
  });
  const document = testInquiry('02-hydrochloric-acid.json');
  const answers = [];
  for (const { call, ask } of [product, other]) {
    const { id: inquiryId } = await ask('kelmoor', 'inquiries.create', { document });
    const solved = await call('kelmoor', 'systems.solve', { inquiryId });
    const explained = await call('kelmoor', 'systems.explain', { system: conflicting() });
    const catalogued = await call('kelmoor', 'catalogue.get');
    answers.push([solved.text, explained.text, catalogued.text]);
  }
  expect(answers[1]).toEqual(answers[0]);
});
