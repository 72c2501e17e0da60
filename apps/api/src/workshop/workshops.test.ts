import { dirname, join } from 'node:path';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Item } from '@flangewise/model';
import { afterAll, expect, it, vi } from 'vitest';
import { auditRevision } from '../catalogue/audit-revision.js';
import { startProduct } from '../http/test-product.js';
import { quickInquiry, testInquiry } from '../routers/test-job.js';
import { buildApi } from '../start/build-api.js';
import { createWorkerPool } from './worker-pool.js';
import { createWorkshops } from './workshops.js';

vi.setConfig({ testTimeout: 120_000 });

const built = await buildApi();
if (!built.ok) throw new Error(built.error.message);
const pool = createWorkerPool(join(dirname(built.value), 'worker.mjs'));
afterAll(pool.close);
const product = await startProduct(afterAll, { runJob: pool.run });
const { ask, database } = product;

/** Everything of another process that shares the database: what it has opened, it opened itself. */
const otherProcess = createWorkshops(database, pool.run);

async function releaseWith(change: (item: Item) => Item): Promise<string> {
  const { revision: draft } = await ask('keeper', 'catalogue.openDraft', {});
  const items = pricedDemoCatalogue.items.map(change);
  const { version } = await ask('keeper', 'catalogue.importFile', {
    ...{ draftId: draft.id, version: draft.version, format: 'json', apply: true },
    contentBase64: Buffer.from(JSON.stringify({ ...pricedDemoCatalogue, items })).toString('base64'),
  });
  return (await ask('keeper', 'catalogue.release', { id: draft.id, version, note: 'Test' })).name;
}

it('reaches every process and every thread with a release', async () => {
  const before = await otherProcess.current();
  expect(before.catalogue.revision).toBe(pricedDemoCatalogue.revision);
  const inquiry = testInquiry(quickInquiry);
  const question = { inquiry, priceList: null };
  expect((await before.run('solve', question)).catalogueRevision).toBe(pricedDemoCatalogue.revision);

  const name = await releaseWith((item) => ({ ...item, leadTimeDays: item.leadTimeDays + 100 }));
  const after = await otherProcess.current();
  expect(after.catalogue.revision).toBe(name);
  const solved = await after.run('solve', question);
  expect(solved.catalogueRevision).toBe(name);
  const [late, early] = [solved, await before.run('solve', question)].map(
    ({ candidates }) => candidates[0]?.deliveryWeeks ?? 0,
  );
  expect(late).toBeGreaterThan(early ?? 0);
  const { id: inquiryId } = await ask('engineer', 'inquiries.create', { document: inquiry });
  const asked = await ask('engineer', 'systems.solve', { inquiryId });
  expect(asked.catalogueRevision).toBe(name);
});

it('opens a catalogue once, and again after it could not be opened', async () => {
  const [one, other] = await Promise.all([otherProcess.current(), otherProcess.current()]);
  expect(one).toBe(other);
  expect(await otherProcess.named(pricedDemoCatalogue.revision)).toBe(
    await otherProcess.named(pricedDemoCatalogue.revision),
  );
  await expect(otherProcess.named('none')).rejects.toThrow('There is no catalogue with revision none');
});

it('stops an audit that nobody waits for, and audits for the next who asks', async () => {
  const { revisions } = await ask('keeper', 'catalogue.listRevisions');
  const { id } = revisions[0];
  const progress = async () => (await ask('sales', 'catalogue.auditProgress', { id })).progress;
  const waiting = new AbortController();
  const desk = { database, workshops: product.workshops };
  const stopped = auditRevision(desk, id, waiting.signal).catch((error: Error) => error.message);
  while (((await progress())?.done ?? 0) < 2);
  waiting.abort();
  expect(await stopped).toContain('Whoever asked did not wait');
  expect(await progress()).toBeNull();
  const answer = await ask('engineer', 'catalogue.audit', { id });
  expect(answer).toMatchObject({ items: pricedDemoCatalogue.items.length });
});
