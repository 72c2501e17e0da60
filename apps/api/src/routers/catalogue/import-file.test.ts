import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Item } from '@flangewise/model';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { bodyLimitBytes } from '../../http/json-body.js';
import { startProduct } from '../../http/test-product.js';

vi.setConfig({ testTimeout: 60_000 });

const { ask, call, get, database } = await startProduct(afterAll);
const shipped = pricedDemoCatalogue;
const firstItem = shipped.items[0] as Item;
let draftId: string;
beforeAll(async () => {
  draftId = (await ask('keeper', 'catalogue.openDraft', {})).revision.id;
});

const stored = async () => ({
  revision: await database.catalogueRevision.findUniqueOrThrow({ where: { id: draftId } }),
  items: await database.catalogueItem.findMany({
    where: { revisionId: draftId },
    orderBy: { position: 'asc' },
  }),
  changes: await database.catalogueChange.count(),
});

const file = async (format: string, content: string | Uint8Array, apply = true) => ({
  draftId,
  version: (await stored()).revision.version,
  format,
  contentBase64: Buffer.from(content).toString('base64'),
  apply,
});

const exported = async (format: string): Promise<Buffer> =>
  (await get('sales', `/api/catalogue/${draftId}/export.${format}`)).rawPayload;

describe.each(['csv', 'xlsx', 'json'])('a file as %s', (format) => {
  it('that was exported says nothing new when it is imported', async () => {
    const before = await stored();
    const { applied, report, difference } = await ask(
      'keeper',
      'catalogue.importFile',
      await file(format, await exported(format), false),
    );
    expect(report).toMatchObject({
      ...{ rows: shipped.items.length, added: 0, changed: 0, unchanged: shipped.items.length },
      troubles: [],
    });
    expect(applied).toBe(false);
    expect(difference).toMatchObject({ added: [], removed: [], changed: [], prices: [] });
    expect(await stored()).toEqual(before);
  });
});

const renamed = (name: string): string =>
  JSON.stringify({ ...shipped, items: [{ ...firstItem, name }, ...shipped.items.slice(1)] });

it('is looked at without any change, and changes the draft when it is taken in', async () => {
  const before = await stored();
  const looked = await ask('keeper', 'catalogue.importFile', await file('json', renamed('Looked at'), false));
  expect(looked).toMatchObject({ applied: false, version: before.revision.version });
  expect(looked.difference.changed).toMatchObject([{ id: firstItem.id, fields: [{ after: 'Looked at' }] }]);
  expect(await stored()).toEqual(before);
  const taken = await ask('keeper', 'catalogue.importFile', await file('json', renamed('Taken in')));
  expect(taken).toMatchObject({ applied: true, version: before.revision.version + 1 });
  const { items, revision } = await stored();
  expect(items.length).toBe(shipped.items.length);
  expect(items[0]?.document).toEqual({ ...firstItem, name: 'Taken in' });
  expect(revision.priceLists).toEqual(shipped.priceLists);
  const { changes } = await ask('keeper', 'catalogue.listChanges', { id: draftId });
  expect(changes[0]).toMatchObject({
    ...{ action: 'imported', subject: 'json', author: 'Teodor Brask' },
    after: { added: 0, changed: 1, unchanged: shipped.items.length - 1 },
  });
});

it('with one trouble changes nothing, and says where and what is allowed', async () => {
  const before = await stored();
  const broken = JSON.stringify({
    ...shipped,
    items: [
      { ...firstItem, name: 'New' },
      { ...shipped.items[1], massKg: 'heavy' },
    ],
  });
  const answer = await ask('keeper', 'catalogue.importFile', await file('json', broken));
  expect(answer).toMatchObject({ applied: false, version: before.revision.version, difference: null });
  expect(answer.report.troubles).toEqual([
    expect.objectContaining({
      given: expect.stringContaining('heavy'),
      message: expect.stringMatching(/number/),
    }),
  ]);
  expect(await stored()).toEqual(before);
});

it.each(['', '\0', '{"items":', 'id;name\r\n1;2'])('that is none changes nothing: %j', async (content) => {
  const before = await stored();
  for (const format of ['csv', 'xlsx', 'json']) {
    const answer = await ask('keeper', 'catalogue.importFile', await file(format, content));
    expect(answer.applied).toBe(false);
    expect(answer.report.troubles.length).toBeGreaterThan(0);
  }
  expect(await stored()).toEqual(before);
});

it('is refused in a version that was not seen, in another format, and where it is not base 64', async () => {
  const before = await stored();
  const good = await file('json', renamed('Late'));
  for (const [input, expected] of [
    [{ ...good, version: 1 }, [409, 'CHANGED_MEANWHILE']],
    [{ ...good, format: 'pdf' }, [400, 'INPUT_NOT_VALID']],
    [{ ...good, contentBase64: 'no base 64!' }, [400, 'INPUT_NOT_VALID']],
    [{ ...good, contentBase64: 'YQ' }, [400, 'INPUT_NOT_VALID']],
  ] as const) {
    const { status, error } = await call('keeper', 'catalogue.importFile', input);
    expect([status, error?.data.reason]).toEqual(expected);
  }
  expect(await stored()).toEqual(before);
});

it('may be larger than any other input, of the catalogue keeper alone', async () => {
  const large = await file('json', renamed('Large').padEnd(2 * bodyLimitBytes), false);
  expect((await call('keeper', 'catalogue.importFile', large)).status).toBe(200);
  for (const as of ['engineer', 'kelmoor', 'nobody'] as const)
    expect((await call(as, 'catalogue.importFile', large)).error?.data.reason).toBe('BODY_TOO_LARGE');
  const saved = await call('keeper', 'catalogue.saveItem', large);
  expect(saved.error?.data.reason).toBe('BODY_TOO_LARGE');
});
