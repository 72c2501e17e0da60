import { expect, it } from 'vitest';
import { openAs } from './page.js';

it('says in its own look that an address leads nowhere, and leads home', async () => {
  const page = await openAs('engineer', { width: 390 });
  const answer = await page.goto('/no/such/page');
  expect(answer?.status()).toBe(404);
  await page.getByRole('heading', { name: 'No such page', level: 1 }).waitFor();
  await page.getByRole('link', { name: 'To the start' }).click();
  await page.getByRole('heading', { name: 'Inquiries', level: 1 }).waitFor();
});
