import { afterAll, beforeAll, expect, it } from 'vitest';
import { startProduct } from '../../http/test-product.js';
import { startJob, type TestJob } from '../test-job.js';

const product = await startProduct(afterAll);
let job: TestJob;
beforeAll(async () => {
  job = await startJob(product);
});

const stored = () => product.database.system.findUniqueOrThrow({ where: { id: job.systemId } });

const labelled = (label: string) => ({
  ...job.system,
  sets: job.system.sets?.map((set) => ({ ...set, label })),
});

it('saves what was seen in the newest version', async () => {
  const { version } = await stored();
  const saved = await product.ask('engineer', 'systems.save', {
    id: job.systemId,
    document: labelled('first'),
    version,
  });
  expect(saved.version).toBe(version + 1);
  const system = await product.ask('engineer', 'systems.get', { id: job.systemId });
  expect(system.version).toBe(version + 1);
  expect(system.document).toEqual({ ...labelled('first'), name: 'A' });
  expect(saved.assessment).toEqual(system.assessment);
});

it('tells who changed it meanwhile, when, and what stands there now', async () => {
  const before = await stored();
  const change = { id: job.systemId, version: before.version };
  await product.ask('engineer', 'systems.save', { ...change, document: labelled('second') });
  const { status, error } = await product.call('engineer', 'systems.save', {
    ...change,
    document: labelled('third'),
  });
  const now = await stored();
  expect([status, error?.data.reason]).toEqual([409, 'SYSTEM_CHANGED_BY_OTHER']);
  expect(error?.data.details).toEqual({
    by: 'Ilse Tamrin',
    at: now.updatedAt.toISOString(),
    document: { ...labelled('second'), name: 'A' },
    version: before.version + 1,
  });
  expect(error?.message).toContain('Ilse Tamrin');
});

it('lets one of several who save at once through', async () => {
  const { version } = await stored();
  const answers = await Promise.all(
    ['a', 'b', 'c', 'd', 'e'].map((label) =>
      product.call('engineer', 'systems.save', { id: job.systemId, document: labelled(label), version }),
    ),
  );
  expect(answers.map(({ status }) => status).sort()).toEqual([200, 409, 409, 409, 409]);
  expect((await stored()).version).toBe(version + 1);
});

it('gives every system of an inquiry a letter of its own, however many come at once', async () => {
  const { inquiryId, system } = job;
  const made = await Promise.all(
    [1, 2, 3, 4].map(() => product.ask('engineer', 'systems.create', { inquiryId, system })),
  );
  expect(made.map(({ name }) => name).sort()).toEqual(['B', 'C', 'D', 'E']);
});

it('freezes a state once, and another one after a change', async () => {
  const freeze = () => product.ask('engineer', 'systems.freeze', { id: job.systemId });
  const first = await freeze();
  expect(first).toMatchObject({
    number: 1,
    author: 'Ilse Tamrin',
    catalogueRevision: product.workshop.catalogue.revision,
  });
  expect(await freeze()).toEqual(first);
  const { version } = await stored();
  await product.ask('engineer', 'systems.save', { id: job.systemId, document: labelled('frozen'), version });
  expect((await freeze()).number).toBe(2);
  const revisions = await product.database.systemRevision.findMany({ orderBy: { number: 'asc' } });
  expect(revisions[0]?.document).not.toEqual(revisions[1]?.document);
  const change = product.database.systemRevision.updateMany({ data: { ruleRevision: 'x' } });
  await expect(change).rejects.toThrow();
  expect(await product.database.systemRevision.findMany({ orderBy: { number: 'asc' } })).toEqual(revisions);
});

it('refuses releases that a document gives itself', async () => {
  const { version } = await stored();
  const documents = [
    { ...job.system, offer: { discountReleasedBy: 'Me' } },
    {
      ...job.system,
      specials: [
        { volumeL: 2, pressurePaGauge: 1e7, maxTemperatureK: 400, material: '1.4404', releasedBy: 'Me' },
      ],
    },
  ];
  for (const document of documents) {
    const { status, error } = await product.call('engineer', 'systems.save', {
      id: job.systemId,
      document,
      version,
    });
    expect([status, error?.data.reason]).toEqual([422, 'RELEASE_IN_DOCUMENT']);
  }
  expect((await stored()).version).toBe(version);
});
