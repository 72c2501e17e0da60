import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startProduct } from '../http/test-product.js';
import { quickWorkers } from '../workshop/quick-workers.js';
import { runHere } from '../workshop/run-here.js';
import {
  clientNames,
  makeTestOffer,
  sendTestOffer,
  startJob,
  type TestJob,
  testInquiry,
  quickInquiry,
  unblock,
} from './test-job.js';

const product = await startProduct(afterAll, { runJob: runHere(quickWorkers()) });
let job: TestJob;
let sent: string;
let draft: string;
const unknown = '0190b7d2-0000-7000-8000-000000000000';

beforeAll(async () => {
  job = await startJob(product, { client: clientNames.sundrey });
  draft = await makeTestOffer(product, job.systemId);
  sent = await sendTestOffer(product, job.systemId);
});

describe('a customer of another client', () => {
  it.each([
    ['inquiries.get', 'id', () => job.inquiryId],
    ['inquiries.update', 'id', () => job.inquiryId],
    ['systems.solve', 'inquiryId', () => job.inquiryId],
    ['systems.get', 'id', () => job.systemId],
    ['systems.getRevision', 'id', () => job.systemId],
    ['evidence.get', 'systemId', () => job.systemId],
    ['offers.get', 'id', () => sent],
  ])('hears of %s what he hears of one that does not exist', async (path, field, existing) => {
    const ask = async (id: string) => {
      const answer = await product.call('kelmoor', path, {
        [field]: id,
        number: 1,
        document: testInquiry(quickInquiry),
      });
      return { status: answer.status, text: answer.text.replaceAll(id, '…') };
    };
    const answer = await ask(existing());
    expect(answer.status).toBe(404);
    expect(answer).toEqual(await ask(unknown));
  });

  it('finds nothing in any list', async () => {
    expect(await product.ask('kelmoor', 'inquiries.list')).toEqual([]);
    expect(await product.ask('kelmoor', 'offers.list')).toEqual([]);
    expect(await product.ask('kelmoor', 'offers.list', { inquiryId: job.inquiryId })).toEqual([]);
  });

  it.each(['offer.pdf', 'section.svg', 'bill-of-materials.csv'])('does not get %s', async (name) => {
    const existing = await product.get('kelmoor', `/api/offers/${sent}/documents/${name}`);
    const none = await product.get('kelmoor', `/api/offers/${unknown}/documents/${name}`);
    expect(existing.statusCode).toBe(404);
    expect(existing.body.replaceAll(sent, '…')).toBe(none.body.replaceAll(unknown, '…'));
  });

  it('cannot enter an inquiry in the name of another client, whether that exists or not', async () => {
    const reasons = [];
    for (const client of [clientNames.sundrey, 'Nobody at all']) {
      const document = testInquiry(quickInquiry, client);
      const { status, error } = await product.call('kelmoor', 'inquiries.create', { document });
      reasons.push([status, error?.data.reason, error?.data.fields?.[0]?.problem]);
    }
    expect(reasons[0]).toEqual([400, 'INPUT_NOT_VALID', 'allowed is your own company, Kelmoor Polymers']);
    expect(reasons[1]).toEqual(reasons[0]);
    expect(await product.database.client.count({ where: { name: 'Nobody at all' } })).toBe(0);
  });
});

describe('the customer himself', () => {
  it('sees his inquiry and what was sent to him, and no draft', async () => {
    const [row] = await product.ask('sundrey', 'inquiries.list');
    expect(row).toMatchObject({ id: job.inquiryId, client: clientNames.sundrey, systems: 1, offers: 1 });
    const offers = await product.ask('sundrey', 'offers.list');
    expect(offers.map((offer: { id: string }) => offer.id)).toEqual([sent]);
    const inquiry = await product.ask('sundrey', 'inquiries.get', { id: job.inquiryId });
    expect(inquiry.offers).toHaveLength(1);
    const hidden = await product.call('sundrey', 'offers.get', { id: draft });
    expect([hidden.status, hidden.error?.data.reason]).toEqual([404, 'NOT_FOUND']);
    expect((await product.get('sundrey', `/api/offers/${draft}/documents/section.svg`)).statusCode).toBe(404);
  });

  it('sees the sums of his offer, and null where an item has its price', async () => {
    const theirs = await product.ask('sundrey', 'offers.get', { id: sent });
    const ours = await product.ask('engineer', 'offers.get', { id: sent });
    expect(theirs.offer.total).toBe(ours.offer.total);
    expect(theirs.offer.positions).toEqual(
      ours.offer.positions.map((position: object) => ({ ...position, unitPrice: null, total: null })),
    );
  });

  it('hears nothing of releases and of what stood against sending', async () => {
    const { id } = await product.database.offerRevision.findFirstOrThrow({ where: { offerId: sent } });
    const { id: authorId } = await product.database.user.findFirstOrThrow();
    await product.database.offerRelease.create({
      data: { offerRevisionId: id, what: 'discount', note: 'a word inside the house', authorId },
    });
    const ours = await product.ask('engineer', 'offers.get', { id: sent });
    expect(JSON.stringify(ours)).toContain('a word inside the house');
    const theirs = await product.ask('sundrey', 'offers.get', { id: sent });
    expect(theirs).toMatchObject({ releases: [], waitsFor: [], blocking: [] });
  });

  it('keeps what he was sent: the inquiry goes to no other client', async () => {
    const givens = [
      [clientNames.kelmoor, `${clientNames.kelmoor} was given`],
      ['', 'no client was given'],
      ['  ', 'no client was given'],
    ] as const;
    for (const [client, given] of givens) {
      const document = { ...testInquiry(quickInquiry), client };
      const { status, error } = await product.call('engineer', 'inquiries.update', {
        id: job.inquiryId,
        document,
      });
      expect([status, error?.data.reason]).toEqual([409, 'CLIENT_HAS_OFFER']);
      expect(error?.message).toContain(given);
    }
    expect(await product.ask('kelmoor', 'offers.list')).toEqual([]);
    const document = testInquiry(quickInquiry, clientNames.sundrey);
    await product.ask('engineer', 'inquiries.update', { id: job.inquiryId, document });
  });

  it('is sent nothing that is addressed to another, whose inquiry it was when the letter was written', async () => {
    const moved = await startJob(product, { client: clientNames.kelmoor });
    const id = await makeTestOffer(product, moved.systemId);
    await unblock(product, id);
    const document = testInquiry(quickInquiry, clientNames.sundrey);
    await product.ask('engineer', 'inquiries.update', { id: moved.inquiryId, document });
    const { status, error } = await product.call('sales', 'offers.send', { id });
    expect([status, error?.data.reason]).toEqual([409, 'OFFER_FOR_ANOTHER_CLIENT']);
    expect(error?.message).toContain(`addressed to ${clientNames.kelmoor}`);
    expect((await product.call('sundrey', 'offers.get', { id })).status).toBe(404);
    await product.ask('sales', 'offers.revise', { id, date: '2026-11-24' });
    await unblock(product, id);
    await product.ask('sales', 'offers.send', { id });
    const { offer } = await product.ask('sundrey', 'offers.get', { id });
    expect(offer.client).toBe(clientNames.sundrey);
  });

  it('keeps seeing the letter that was sent while the next one is written', async () => {
    await product.ask('sales', 'offers.revise', { id: sent, date: '2026-12-01' });
    const theirs = await product.ask('sundrey', 'offers.get', { id: sent });
    expect([theirs.revision, theirs.state, theirs.revisions.length]).toEqual(['A', 'sent', 1]);
    const asked = await product.call('sundrey', 'offers.get', { id: sent, revision: 'B' });
    expect(asked.status).toBe(404);
    expect((await product.ask('engineer', 'offers.get', { id: sent })).revision).toBe('B');
  });

  it('enters an inquiry for his own company and changes it until an engineer takes it up', async () => {
    const document = testInquiry(quickInquiry);
    const { id } = await product.ask('kelmoor', 'inquiries.create', { document });
    expect(await product.ask('engineer', 'inquiries.get', { id })).toMatchObject({
      owner: null,
      clientId: 'demo-client-kelmoor',
    });
    await product.ask('kelmoor', 'inquiries.update', { id, document: { ...document, title: 'Changed' } });
    await product.ask('engineer', 'systems.create', { inquiryId: id, system: { inquiry: document } });
    const late = await product.call('kelmoor', 'inquiries.update', { id, document });
    expect([late.status, late.error?.data.reason]).toEqual([409, 'INQUIRY_TAKEN_UP']);
    expect((await product.ask('kelmoor', 'inquiries.get', { id })).title).toBe('Changed');
  });
});
