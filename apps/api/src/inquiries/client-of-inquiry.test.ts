import { Client } from 'pg';
import { afterAll, expect, it } from 'vitest';
import { startProduct } from '../http/test-product.js';
import { quickInquiry, testInquiry } from '../routers/test-job.js';

const product = await startProduct(afterAll);
const { ask, call, database, url } = product;

/** Enters an inquiry as the engineer and says for which client it now is. */
async function clientEntered(name: string): Promise<string | null> {
  const { id } = await ask('engineer', 'inquiries.create', { document: testInquiry(quickInquiry, name) });
  return (await database.inquiry.findUniqueOrThrow({ where: { id } })).clientId;
}

it('enters a client once, whatever the case and the blanks of its name', async () => {
  const first = await clientEntered('Pelm Orvane');
  expect(await clientEntered('  pelm   ORVANE ')).toBe(first);
  expect(await clientEntered('Pelm\u00a0Orvane')).toBe(first);
  expect(await clientEntered('Pelmorvane')).not.toBe(first);
});

it('takes the client that another request entered at the same moment', async () => {
  const other = new Client({ connectionString: url });
  await other.connect();
  await other.query('BEGIN');
  await other.query(`INSERT INTO "Client" ("id", "name", "updatedAt") VALUES ('other', 'Tarvane AG', now())`);
  const entered = clientEntered('TARVANE  ag');
  const waiting = `SELECT 1 FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'`;
  while ((await database.$queryRawUnsafe<unknown[]>(waiting)).length === 0);
  await other.query('COMMIT');
  await other.end();
  expect(await entered).toBe('other');
  expect(
    await database.client.count({ where: { name: { startsWith: 'tarvane', mode: 'insensitive' } } }),
  ).toBe(1);
});

it('leaves no client behind where the inquiry is not saved', async () => {
  await database.$executeRaw`ALTER TABLE "Inquiry" ADD CONSTRAINT "none" CHECK ("title" = '') NOT VALID`;
  const document = testInquiry(quickInquiry, 'Never Entered');
  expect((await call('engineer', 'inquiries.create', { document })).status).toBe(500);
  expect(await database.client.count({ where: { name: 'Never Entered' } })).toBe(0);
});
