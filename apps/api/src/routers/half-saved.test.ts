import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { Client } from 'pg';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { startProduct } from '../http/test-product.js';
import { quickWorkers } from '../workshop/quick-workers.js';
import { runHere } from '../workshop/run-here.js';
import { makeTestOffer, startJob, type TestJob } from './test-job.js';

vi.setConfig({ testTimeout: 60_000 });

const product = await startProduct(afterAll, { runJob: runHere(quickWorkers()) });
const { call, database } = product;
let job: TestJob;
let offerId: string;
let draftId: string;
beforeAll(async () => {
  job = await startJob(product);
  offerId = await makeTestOffer(product, job.systemId, { discountPercent: '10' });
  draftId = (await product.ask('keeper', 'catalogue.openDraft', {})).revision.id;
});

async function run(sql: string, values: readonly unknown[] = []): Promise<{ rowCount: number | null }> {
  const client = new Client({ connectionString: product.url });
  await client.connect();
  return client.query(sql, [...values]).finally(() => client.end());
}

/**
 * Makes the database do something in the middle of a write: when the documents of an offer are saved, when the items of a draft
 * are there but not its prices, when a release is written down.
 */
const inTheMiddle = (statement: string): Promise<unknown> =>
  run(`
    CREATE OR REPLACE FUNCTION in_the_middle() RETURNS trigger LANGUAGE plpgsql AS $$
    BEGIN ${statement}; RETURN NEW; END $$;
    CREATE OR REPLACE TRIGGER "zz_middle" BEFORE INSERT ON "OfferFile"
      FOR EACH ROW WHEN (NEW."name" = 'section.svg') EXECUTE FUNCTION in_the_middle();
    CREATE OR REPLACE TRIGGER "zz_middle" AFTER INSERT ON "CatalogueItem"
      FOR EACH STATEMENT EXECUTE FUNCTION in_the_middle();
    CREATE OR REPLACE TRIGGER "zz_middle" AFTER UPDATE ON "CatalogueRevision"
      FOR EACH ROW WHEN (NEW."state" = 'released') EXECUTE FUNCTION in_the_middle();`);

/** Every row of what a job consists of. */
const everything = async () => ({
  inquiries: await database.inquiry.findMany({ orderBy: { id: 'asc' } }),
  systems: await database.system.findMany({ orderBy: { id: 'asc' } }),
  systemRevisions: await database.systemRevision.findMany({ orderBy: { id: 'asc' } }),
  offers: await database.offer.findMany({ orderBy: { id: 'asc' } }),
  offerRevisions: await database.offerRevision.findMany({ orderBy: { id: 'asc' } }),
  releases: await database.offerRelease.findMany(),
  catalogues: await database.catalogueRevision.findMany({ orderBy: { id: 'asc' } }),
  catalogueItems: await database.catalogueItem.findMany({ orderBy: [{ revisionId: 'asc' }, { id: 'asc' }] }),
  catalogueChanges: await database.catalogueChange.findMany(),
  files: await database.offerFile.findMany({
    orderBy: { id: 'asc' },
    select: { id: true, name: true, bytes: true },
  }),
});

const writes: readonly (readonly ['engineer' | 'approver' | 'keeper', string, () => unknown])[] = [
  ['engineer', 'offers.create', () => ({ systemId: job.systemId, date: '2026-11-24' })],
  ['engineer', 'offers.revise', () => ({ id: offerId })],
  ['approver', 'offers.release', () => ({ id: offerId, what: 'discount', note: 'x' })],
  ['keeper', 'catalogue.release', () => ({ id: draftId, version: 1, note: 'x' })],
  [
    'keeper',
    'catalogue.importFile',
    () => ({
      ...{ draftId, version: 1, format: 'json', apply: true },
      contentBase64: Buffer.from(JSON.stringify(pricedDemoCatalogue)).toString('base64'),
    }),
  ],
];

it.each(writes)(
  'finds the old state after the database fails in the middle, as %s, of %s',
  async (as, path, input) => {
    const before = await everything();
    await inTheMiddle(`RAISE EXCEPTION 'disk full'`);
    const { status, error, text } = await call(as, path, input());
    expect([status, error?.data.reason]).toEqual([500, 'FAULT']);
    expect(text).not.toContain('disk full');
    expect(await everything()).toEqual(before);
  },
);

it.each([
  ['engineer', 'offers.create', () => ({ systemId: job.systemId, date: '2026-11-24' })],
  ['keeper', 'catalogue.release', () => ({ id: draftId, version: 1, note: 'x' })],
] as const)(
  'finds the old state after the connection is cut in the middle, as %s, of %s',
  async (as, path, input) => {
    const before = await everything();
    await inTheMiddle('PERFORM pg_sleep(60)');
    const answer = call(as, path, input());
    const sleeping = `FROM pg_stat_activity WHERE datname = current_database() AND wait_event = 'PgSleep'`;
    while ((await run(`SELECT pg_terminate_backend(pid) ${sleeping}`)).rowCount === 0);
    expect((await answer).status).toBe(500);
    expect(await everything()).toEqual(before);
  },
);

it('saves it once the database works again', async () => {
  for (const table of ['OfferFile', 'CatalogueItem', 'CatalogueRevision'])
    await run(`DROP TRIGGER "zz_middle" ON "${table}"`);
  for (const [as, path, input] of writes) {
    const { status, error } = await call(as, path, input());
    // The import is of the version that was released by now.
    const expected = path === 'catalogue.importFile' ? [409, 'CATALOGUE_NO_DRAFT'] : [200, undefined];
    expect([path, status, error?.data.reason]).toEqual([path, ...expected]);
  }
});
