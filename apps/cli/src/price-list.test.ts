import { join } from 'node:path';
import { expect, it } from 'vitest';
import { exitCodes } from './exit-code.js';
import { run, runJson } from './testing/run.js';

const inquiry = join(import.meta.dirname, '../../../tests/acceptance/inquiries/04-screening.json');

it('a system that is taken keeps the price list that it was searched by', async () => {
  const byList = ['solve', inquiry, '--most', '1', '--price-list', '2026-11-GBP'];
  const { answer } = await runJson([...byList, '--take', 'A']);
  expect(answer).toMatchObject({ offer: { priceList: '2026-11-GBP' } });
  const without = await runJson(['solve', inquiry, '--most', '1', '--take', 'A']);
  expect(without.answer).not.toHaveProperty('offer');
});

it('a price list that is not there is refused with those that are', async () => {
  const { exit, said } = await run(['solve', inquiry, '--price-list', '1999']);
  expect(exit).toBe(exitCodes.badInput);
  expect(said).toContain('there are 2026-11-EUR, 2026-11-GBP');
});
