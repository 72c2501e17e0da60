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

describe('a revision of the catalogue', () => {
  let number = 0;
  const draftWith = async (...ids: readonly string[]): Promise<string> => {
    number += 1;
    const { id } = await database.catalogueRevision.create({
      data: {
        ...{ name: `catalogue ${number}`, maker: 'Averholt', priceLists: [], tables: {} },
        items: {
          create: ids.map((one, position) => ({ id: one, slot: 'vessel', position, document: {} })),
        },
      },
    });
    return id;
  };
  const release = (id: string) =>
    database.catalogueRevision.update({
      where: { id },
      data: { state: 'released', releasedAt: new Date(0) },
    });
  const discard = (id: string) =>
    database.catalogueRevision.update({ where: { id }, data: { state: 'discarded' } });

  it('begins as a draft, with all that it will hold', async () => {
    const born = database.catalogueRevision.create({
      data: {
        ...{ name: 'born', maker: 'Averholt', priceLists: [], tables: {} },
        ...{ state: 'released', releasedAt: new Date(0) },
      },
    });
    await expect(born).rejects.toMatchObject(refused);
  });

  it('may change while it is a draft, and is never deleted', async () => {
    const id = await draftWith('VS-1001');
    await database.catalogueRevision.update({ where: { id }, data: { note: 'x' } });
    await database.catalogueItem.updateMany({ where: { revisionId: id }, data: { document: { a: 1 } } });
    await database.catalogueItem.deleteMany({ where: { revisionId: id } });
    await expect(database.catalogueRevision.delete({ where: { id } })).rejects.toMatchObject(refused);
  });

  it.each([
    ['released', release],
    ['discarded', discard],
  ] as const)('is kept as it is once it is %s, with its items', async (_, end) => {
    const id = await draftWith('VS-1001');
    const other = await draftWith('VS-1002');
    await end(id);
    const where = { revisionId: id };
    const item = { revisionId: id, id: 'VS-1003', slot: 'vessel', position: 1, document: {} };
    for (const change of [
      () => database.catalogueRevision.update({ where: { id }, data: { note: 'other' } }),
      () => database.catalogueRevision.update({ where: { id }, data: { state: 'draft', releasedAt: null } }),
      () => database.catalogueRevision.update({ where: { id }, data: { priceLists: [{}] } }),
      () => database.catalogueRevision.delete({ where: { id } }),
      () => database.catalogueItem.create({ data: item }),
      () => database.catalogueItem.updateMany({ where, data: { document: { a: 1 } } }),
      () => database.catalogueItem.updateMany({ where, data: { revisionId: other } }),
      () => database.catalogueItem.updateMany({ where: { revisionId: other }, data: { revisionId: id } }),
      () => database.catalogueItem.deleteMany({ where }),
    ])
      await expect(change()).rejects.toMatchObject(refused);
    expect(await database.catalogueItem.findMany({ where })).toMatchObject([{ id: 'VS-1001', document: {} }]);
  });

  it('says when it was released', async () => {
    const id = await draftWith();
    const change = database.catalogueRevision.update({ where: { id }, data: { state: 'released' } });
    await expect(change).rejects.toThrow('CatalogueRevision_released_at');
  });

  it('of a person is the only draft', async () => {
    const of = (name: string) =>
      database.catalogueRevision.create({
        data: { name, maker: 'Averholt', priceLists: [], tables: {}, authorId: 'engineer' },
      });
    const { id } = await of('first');
    await expect(of('second')).rejects.toMatchObject({ code: 'P2002' });
    await discard(id);
    await of('third');
  });

  it('keeps who changed what', async () => {
    const revisionId = await draftWith();
    const { id } = await database.catalogueChange.create({
      data: { revisionId, version: 1, action: 'opened', authorId: 'engineer' },
    });
    const where = { id };
    await expect(database.catalogueChange.update({ where, data: { subject: 'x' } })).rejects.toMatchObject(
      refused,
    );
    await expect(database.catalogueChange.delete({ where })).rejects.toMatchObject(refused);
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
