import { ruleBook } from '@flangewise/constraints';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { apiOf, readInquiry, saveJob } from './api.js';
import { waitForChecks } from './journey.js';
import { openAs } from './page.js';
import type { Person } from './people.js';
import { step } from './step.js';
import { plain } from './text.js';

const count = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text });
const torque = ruleBook.find(({ id }) => id === 'stirring.coupling-torque')!;

it.each<Person>(['engineer', 'sales', 'approver', 'keeper'])('leads the %s to every rule', async (person) => {
  const page = await openAs(person);
  await page.getByRole('navigation', { name: 'Areas' }).getByRole('link', { name: 'Rules' }).click();
  await count(page, `${ruleBook.length} rules`).waitFor();
});

it('finds a rule and shows what it reads, says and rests on', async () => {
  const page = await openAs('engineer');
  await page.goto('/rules');
  await step('find it by its words', async () => {
    await page.getByRole('searchbox').fill('coupling torque');
    await page.getByRole('link', { name: torque.title }).waitFor();
  });
  await step('say so where nothing is found', async () => {
    await page.getByRole('searchbox').fill('no such rule');
    await page.getByText('No rule has all of these words').waitFor();
    await page.getByRole('button', { name: 'Show every rule' }).click();
    await count(page, `${ruleBook.length} rules`).waitFor();
  });
  await step('reach it by slot', async () => {
    await page.getByRole('tab', { name: 'By slot' }).click();
    await page
      .getByRole('tabpanel')
      .getByRole('link', { name: new RegExp(torque.title) })
      .first()
      .click();
    await page.getByRole('heading', { name: torque.title, level: 1 }).waitFor();
  });
  const text = plain(await page.getByRole('article').innerText());
  for (const part of ['Demand ≤ limit', 'Working torque of a magnetic coupling', 'not decidable', 'Rieger'])
    expect(text).toContain(part);
});

it('is where a check leads', async () => {
  const page = await openAs('engineer');
  const { systemId } = await saveJob(await apiOf(page), readInquiry('01-hydrogenation'));
  await page.goto(`/systems/${systemId}`);
  await waitForChecks(page);
  await page.getByRole('button', { name: /Hot batch leaves room in the vessel/ }).click();
  await page
    .getByRole('dialog')
    .getByRole('link', { name: /^The rule/ })
    .click();
  await page.getByRole('heading', { name: 'Hot batch leaves room in the vessel', level: 1 }).waitFor();
});

it('shows who sits on which port of the cover, and leads to that part', async () => {
  const page = await openAs('engineer');
  const { systemId } = await saveJob(await apiOf(page), readInquiry('01-hydrogenation'));
  await page.goto(`/systems/${systemId}`);
  await waitForChecks(page);
  const ports = page.getByRole('table', { name: 'Ports of the cover' });
  await ports
    .getByRole('link', { name: /Relief/ })
    .first()
    .click();
  await page.waitForURL(/#sets\[0\]\.relief$/);
  expect(plain(await ports.innerText())).toContain('free, plugged');
});

it('has no page for customers', async () => {
  const page = await openAs('sundrey');
  expect(await page.getByRole('link', { name: 'Rules' }).count()).toBe(0);
  await page.goto('/rules');
  await page.getByRole('heading', { name: 'No such page' }).waitFor();
});
