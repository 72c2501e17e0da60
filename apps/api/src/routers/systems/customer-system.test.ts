import type { SystemInput } from '@flangewise/model';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Caller, startProduct } from '../../http/test-product.js';
import { clientNames, quickInquiry, testInquiry } from '../test-job.js';

const product = await startProduct(afterAll);
const { ask, call, database } = product;
const unknown = '0190b7d2-0000-7000-8000-000000000000';

let first: SystemInput;
let second: SystemInput;

/** An inquiry of a customer that nobody has taken up. */
const inquire = async (): Promise<string> =>
  (await ask('sundrey', 'inquiries.create', { document: testInquiry(quickInquiry) })).id;

/** The same, with a system that the customer saved. */
async function configure(): Promise<{ inquiryId: string; systemId: string }> {
  const inquiryId = await inquire();
  const { id: systemId } = await ask('sundrey', 'systems.create', { inquiryId, system: first });
  return { inquiryId, systemId };
}

const save = (as: Caller, id: string, version: number, document = second) =>
  call(as, 'systems.save', { id, document, version });

const ownerOf = async (inquiryId: string): Promise<string | null> =>
  (await database.inquiry.findUniqueOrThrow({ where: { id: inquiryId } })).ownerId;

beforeAll(async () => {
  const { candidates } = await ask('sundrey', 'systems.solve', { inquiryId: await inquire(), most: 2 });
  [first, second] = candidates.map(({ system }: { system: SystemInput }) => system);
});

describe('while nobody has taken the inquiry up', () => {
  it('keeps what a customer configures, and an engineer sees it', async () => {
    const { inquiryId, systemId } = await configure();
    const saved = await save('sundrey', systemId, 1);
    expect([saved.status, saved.data?.version]).toEqual([200, 2]);
    expect(second).not.toEqual(first);
    for (const as of ['sundrey', 'engineer', 'sales', 'approver'] as const) {
      const system = await ask(as, 'systems.get', { id: systemId });
      expect(system.document).toEqual({ ...second, name: 'A' });
      expect(system.assessment).toEqual(saved.data.assessment);
      const { systems } = await ask(as, 'inquiries.get', { id: inquiryId });
      expect(systems).toMatchObject([{ id: systemId, name: 'A', version: 2 }]);
    }
    expect(await ownerOf(inquiryId)).toBeNull();
  });

  it('says who may change it', async () => {
    const { inquiryId } = await configure();
    const may = async (as: Caller): Promise<boolean> =>
      (await ask(as, 'inquiries.get', { id: inquiryId })).mayChange;
    expect(await may('sundrey')).toBe(true);
    expect(await may('engineer')).toBe(true);
    expect(await may('sales')).toBe(false);
    expect(await may('approver')).toBe(false);
  });

  it('takes no terms of an offer from a customer, and keeps those that stand there', async () => {
    const { inquiryId, systemId } = await configure();
    const offer = { discountPercent: '50' };
    const made = await ask('sundrey', 'systems.create', { inquiryId, system: { ...first, offer } });
    const stored = async (id: string) =>
      (await database.system.findUniqueOrThrow({ where: { id } })).document as { offer?: object };
    expect((await stored(made.id)).offer).toBeUndefined();
    await database.system.update({
      where: { id: systemId },
      data: { document: { ...(first as object), offer: { discountPercent: '3' } } },
    });
    expect((await save('sundrey', systemId, 1, { ...second, offer })).status).toBe(200);
    expect((await stored(systemId)).offer).toEqual({ discountPercent: '3' });
    const behind = await save('sundrey', systemId, 1);
    expect([behind.status, behind.error?.data.reason]).toEqual([409, 'SYSTEM_CHANGED_BY_OTHER']);
    expect(behind.text).not.toContain('discountPercent');
  });

  it('takes no limits of engineering from a customer, and keeps those that stand there', async () => {
    const { inquiryId, systemId } = await configure();
    const given = { ...second, settings: { fillLimit: 0.95, serviceFactor: 1 } };
    const settingsOf = async (id: string) =>
      ((await database.system.findUniqueOrThrow({ where: { id } })).document as SystemInput).settings;
    const usual = (await save('sundrey', systemId, 1)).data.assessment;
    const saved = await save('sundrey', systemId, 2, given);
    expect([saved.status, saved.data?.assessment]).toEqual([200, usual]);
    expect(await settingsOf(systemId)).toBeUndefined();
    const made = await ask('sundrey', 'systems.create', { inquiryId, system: given });
    expect(await settingsOf(made.id)).toBeUndefined();

    const settings = { fillLimit: 0.5, fillLimitReason: 'foams' };
    const document = { ...(second as object), settings };
    await database.system.update({ where: { id: systemId }, data: { document } });
    expect((await save('sundrey', systemId, 3, given)).data.assessment).not.toEqual(usual);
    expect(await settingsOf(systemId)).toEqual(settings);
  });

  it('is hidden from another client, as if it did not exist', async () => {
    const { inquiryId, systemId } = await configure();
    for (const [path, existing, none] of [
      ['systems.create', { inquiryId, system: first }, { inquiryId: unknown, system: first }],
      [
        'systems.save',
        { id: systemId, document: second, version: 1 },
        { id: unknown, document: second, version: 1 },
      ],
    ] as const) {
      const theirs = await call('kelmoor', path, existing);
      const nobodys = await call('kelmoor', path, none);
      expect([theirs.status, theirs.error?.data.reason]).toEqual([404, 'NOT_FOUND']);
      expect(theirs.text.replaceAll(inquiryId, '…').replaceAll(systemId, '…')).toBe(
        nobodys.text.replaceAll(unknown, '…'),
      );
    }
    expect(await database.system.count({ where: { inquiryId } })).toBe(1);
    expect(await database.system.count({ where: { id: systemId, version: 1 } })).toBe(1);
  });
});

describe('once an engineer takes it up', () => {
  it.each([
    [
      'saves the system',
      (id: string) => ask('engineer', 'systems.save', { id, document: second, version: 1 }),
    ],
    ['freezes it', (id: string) => ask('engineer', 'systems.freeze', { id })],
    ['offers it', (id: string) => ask('engineer', 'offers.create', { systemId: id, date: '2026-11-24' })],
  ])('who %s, a customer changes nothing of it, and hears whom to ask', async (_, act) => {
    const { inquiryId, systemId } = await configure();
    await act(systemId);
    const { ownerId, number } = await database.inquiry.findUniqueOrThrow({ where: { id: inquiryId } });
    expect(ownerId).toBe('demo-engineer');
    const { version } = await database.system.findUniqueOrThrow({ where: { id: systemId } });
    const refused = [
      await save('sundrey', systemId, version),
      await call('sundrey', 'systems.create', { inquiryId, system: first }),
      await call('sundrey', 'inquiries.update', { id: inquiryId, document: testInquiry(quickInquiry) }),
    ];
    for (const { status, error } of refused) {
      expect([status, error?.data.reason]).toEqual([409, 'INQUIRY_TAKEN_UP']);
      expect(error?.message).toContain('Write to Ilse Tamrin');
      expect(error?.message).toContain(String(number));
    }
    expect(await ask('sundrey', 'inquiries.get', { id: inquiryId })).toMatchObject({
      mayChange: false,
      owner: 'Ilse Tamrin',
    });
    expect((await database.system.findUniqueOrThrow({ where: { id: systemId } })).version).toBe(version);
    const assessed = await call('sundrey', 'systems.assess', { system: second });
    expect(assessed.status).toBe(200);
  });

  it('lets no customer save after an engineer who was quicker', async () => {
    const { inquiryId, systemId } = await configure();
    const document = testInquiry(quickInquiry, clientNames.sundrey);
    const [taken, saved] = await Promise.all([
      call('engineer', 'inquiries.update', { id: inquiryId, document }),
      save('sundrey', systemId, 1),
    ]);
    expect(taken.status).toBe(200);
    expect([200, 409]).toContain(saved.status);
    expect((await save('sundrey', systemId, 2)).error?.data.reason).toBe('INQUIRY_TAKEN_UP');
  });
});
