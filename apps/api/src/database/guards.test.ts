import { beforeAll, afterAll, describe, expect, it } from 'vitest';
import type { Database } from './client.js';
import { migratedDatabase } from './test-database.js';

const putAway: (() => Promise<void>)[] = [];
let database: Database;

beforeAll(async () => {
  ({ database } = await migratedDatabase((one) => void putAway.push(one)));
  await database.client.create({ data: { id: 'client', name: 'Sundrey Fine Chemicals' } });
  await database.user.create({
    data: { id: 'engineer', name: 'Ilse Tamrin', email: 'a@averholt.example', role: 'applications_engineer' },
  });
  await database.inquiry.create({
    data: { id: 'inquiry', title: 'Hydrogenation', clientId: 'client', authorId: 'engineer', document: {} },
  });
  await database.system.create({
    data: {
      id: 'system',
      inquiryId: 'inquiry',
      letter: 'A',
      label: 'steel',
      authorId: 'engineer',
      document: {},
    },
  });
  await database.systemRevision.create({
    data: {
      ...{ id: 'revision', systemId: 'system', number: 1, document: {}, assessment: {} },
      ...{ authorId: 'engineer', catalogueRevision: '1', ruleRevision: '1' },
    },
  });
  await database.offer.create({ data: { id: 'offer', systemId: 'system' } });
});

afterAll(async () => {
  for (const one of putAway.reverse()) await one();
});

/** How the client reports restrict_violation (SQLSTATE 23001), which the guards raise. */
const refused = { code: 'P2003' };

let number = 0;

async function offerRevision(state: 'draft' | 'in_review' | 'sent'): Promise<string> {
  number += 1;
  const { id } = await database.offerRevision.create({
    data: {
      ...{ offerId: 'offer', number, letter: '', systemRevisionId: 'revision', document: { total: '1' } },
      ...{ state, blocking: [], priceList: 'list', authorId: 'engineer' },
      sentAt: state === 'sent' ? new Date(0) : null,
    },
  });
  return id;
}

describe('people', () => {
  it('are customers exactly when they belong to a company', async () => {
    const person = { name: 'X', email: 'x@example.com' };
    const customer = database.user.create({ data: { ...person, id: 'x1', role: 'customer' } });
    await expect(customer).rejects.toThrow('User_client_of_customer');
    const engineer = database.user.create({
      data: { ...person, id: 'x2', role: 'approver', clientId: 'client' },
    });
    await expect(engineer).rejects.toThrow('User_client_of_customer');
  });
});

describe('a revision of a system', () => {
  it('is never changed', async () => {
    const change = database.systemRevision.update({
      where: { id: 'revision' },
      data: { document: { a: 1 } },
    });
    await expect(change).rejects.toMatchObject(refused);
  });

  it('is never deleted', async () => {
    await expect(database.systemRevision.delete({ where: { id: 'revision' } })).rejects.toMatchObject(
      refused,
    );
  });
});

describe('a revision of an offer', () => {
  it.each(['draft', 'in_review'] as const)('may change and go as %s', async (state) => {
    const id = await offerRevision(state);
    await database.offerRevision.update({ where: { id }, data: { document: { total: '2' } } });
    await database.offerRevision.delete({ where: { id } });
  });

  it('is kept as it was sent', async () => {
    const id = await offerRevision('sent');
    const where = { id };
    for (const data of [{ document: { total: '2' } }, { state: 'draft' as const }, { priceList: 'other' }])
      await expect(database.offerRevision.update({ where, data })).rejects.toMatchObject(refused);
    await expect(database.offerRevision.delete({ where })).rejects.toMatchObject(refused);
  });

  it('may be replaced once sent, without any other change, and never comes back', async () => {
    const where = { id: await offerRevision('sent') };
    const both = database.offerRevision.update({ where, data: { state: 'replaced', priceList: 'other' } });
    await expect(both).rejects.toMatchObject(refused);
    await database.offerRevision.update({ where, data: { state: 'replaced' } });
    const back = database.offerRevision.update({ where, data: { state: 'sent' } });
    await expect(back).rejects.toMatchObject(refused);
  });

  it('says when it was sent', async () => {
    const where = { id: await offerRevision('draft') };
    const sent = database.offerRevision.update({ where, data: { state: 'sent' } });
    await expect(sent).rejects.toThrow('OfferRevision_sent_at');
  });
});
