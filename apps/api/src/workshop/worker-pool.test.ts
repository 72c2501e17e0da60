import { dirname, join } from 'node:path';
import { afterAll, expect, it, vi } from 'vitest';
import { startProduct } from '../http/test-product.js';
import { testInquiry } from '../routers/test-job.js';
import { buildApi } from '../start/build-api.js';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { packCatalogue } from '../catalogue/packed-catalogue.js';
import { runHere } from './run-here.js';
import { createWorkerPool } from './worker-pool.js';
import { createWorkers } from './workers.js';

vi.setConfig({ testTimeout: 120_000 });

const built = await buildApi();
if (!built.ok) throw new Error(built.error.message);
const pool = createWorkerPool(join(dirname(built.value), 'worker.mjs'));
afterAll(pool.close);
const over = packCatalogue('shipped', JSON.stringify(pricedDemoCatalogue));

it('answers what this thread would answer, and lets others through meanwhile', async () => {
  const product = await startProduct(afterAll, { runJob: pool.run });
  const document = testInquiry('01-hydrogenation.json');
  const { id } = await product.ask('engineer', 'inquiries.create', { document });
  const order: string[] = [];
  const solving = product
    .ask('engineer', 'systems.solve', { inquiryId: id })
    .finally(() => order.push('solve'));
  for (let turn = 0; turn < 3; turn++) {
    await product.ask('engineer', 'inquiries.list');
    order.push('list');
  }
  const solved = await solving;
  expect(order).toEqual(['list', 'list', 'list', 'solve']);
  const question = { inquiry: document, priceList: '2026-11-EUR' };
  const here = await runHere(createWorkers())('solve', { over, question });
  expect(solved).toEqual(JSON.parse(JSON.stringify(here)));
});

it('hands on why a job cannot be done', async () => {
  const inquiry = { title: '' };
  await expect(pool.run('solve', { over, question: { inquiry, priceList: null } })).rejects.toThrow(
    'does not fit its schema',
  );
});
