import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { slotNames } from '@flangewise/model';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openAs, openPage } from './page.js';
import type { Person } from './people.js';
import { commercialIn, pricesIn } from './prices.js';
import { step } from './step.js';
import { plain, wholeAmount } from './text.js';
import { record } from './traffic.js';

const { items, priceLists } = pricedDemoCatalogue;
const vessels = items.filter(({ slot }) => slot === 'vessel');
const lastSlot = slotNames.filter((name) => items.some(({ slot }) => slot === name)).at(-1);
const priceOf = (id: string): string => wholeAmount(priceLists[0]?.prices[id] ?? '');

const table = (page: Page) => page.getByRole('table', { name: 'Parts of the range' });
const search = (page: Page) => page.getByLabel('Number, name or value');
const count = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text });
const rowOf = async (page: Page, id: string): Promise<string> =>
  plain(await table(page).getByRole('row').filter({ hasText: id }).innerText());

it('shows the catalogue keeper the range at once, with values and prices', async () => {
  const page = await openAs('keeper');
  expect(new URL(page.url()).pathname).toBe('/range');
  await step('list every part, slot by slot', async () => {
    await count(page, `${items.length} parts`).waitFor();
    const slotsThere = new Set(items.map(({ slot }) => slot)).size;
    expect(await table(page).getAttribute('aria-rowcount')).toBe(String(items.length + slotsThere + 1));
    expect(await table(page).getByRole('rowheader').first().innerText()).toMatch(/^Vessel/);
    expect(await page.getByRole('alert').filter({ hasText: 'open to' }).count()).toBe(0);
  });
  await step('find one by its number, with values, delivery and price', async () => {
    await search(page).fill('vs-1001');
    await count(page, `1 of ${items.length} parts`).waitFor();
    const row = await rowOf(page, 'VS-1001');
    expect(row).toContain('Vessel 5 mL, 1.4404, PS 150');
    expect(row).toMatch(/holds 5(\.\d+)? mL.*bore 20.*150 bar\(g\).*−60 °C to 250 °C/);
    expect(row).toContain('25 d');
    expect(row).toContain(priceOf('VS-1001'));
  });
  await step('keep to a slot', async () => {
    await search(page).fill('');
    await page.getByLabel('Slot').selectOption({ label: 'Vessel' });
    await count(page, `${vessels.length} of ${items.length} parts`).waitFor();
    expect(await table(page).getByRole('rowheader').allInnerTexts()).toHaveLength(1);
  });
  await step('keep to a family, a material and a stage of life', async () => {
    await page.getByLabel('Wetted material').selectOption('PTFE');
    await page.getByLabel('Life').selectOption('current');
    const found = vessels.filter(({ wetted, life }) => wetted.includes('PTFE') && life === 'current');
    await count(page, `${found.length} of ${items.length} parts`).waitFor();
    await page.getByLabel('Wetted material').selectOption('');
    await page.getByLabel('Life').selectOption('');
    await page.getByLabel('Slot').selectOption('');
    // Every part again, not so many of them.
    await page
      .getByRole('status')
      .filter({ hasText: new RegExp(`^${items.length} parts`) })
      .waitFor();
  });
  await step('lead by arrow keys to the last part, and show it', async () => {
    const ofLastSlot = items.filter(({ slot }) => slot === lastSlot);
    const [before, last] = ofLastSlot.slice(-2);
    await page.getByRole('heading', { name: 'Range', level: 1 }).click();
    await page.keyboard.press('End');
    const row = table(page)
      .getByRole('row')
      .filter({ hasText: last?.id ?? '' });
    await row.waitFor();
    await row.getByRole('button').focus();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: before?.name ?? '' });
    expect(await dialog.innerText()).toContain(before?.id);
    expect(new URL(page.url()).hash).toBe(`#${before?.id ?? ''}`);
    await page.keyboard.press('Escape');
  });
  await step('say so where nothing is found, and show all again', async () => {
    await search(page).fill('no such part');
    await page.getByText('No part has all of these words and kinds').waitFor();
    await page.getByRole('button', { name: 'Show every part' }).click();
    await count(page, `${items.length} parts`).waitFor();
    expect(await search(page).inputValue()).toBe('');
  });
});

it.each<Person>(['engineer', 'sales', 'approver'])('leads the %s to it and back', async (person) => {
  const page = await openAs(person);
  const areas = page.getByRole('navigation', { name: 'Areas' });
  await areas.getByRole('link', { name: 'Range' }).click();
  await count(page, `${items.length} parts`).waitFor();
  expect(await rowOf(page, 'VS-1001')).toContain(priceOf('VS-1001'));
  await areas.getByRole('link', { name: 'Inquiries' }).click();
  await page.getByRole('heading', { name: 'Inquiries', level: 1 }).waitFor();
});

it('shows a customer who comes there parts without any price', async () => {
  const page = await openAs('sundrey');
  expect(await page.getByRole('navigation', { name: 'Areas' }).count()).toBe(0);
  const traffic = record(page);
  await page.goto('/range');
  await count(page, `${items.length} parts`).waitFor();
  expect(await table(page).innerText()).not.toMatch(/price|€|Ready in/i);
  for (const { url, kind, body } of await traffic.received())
    if (kind === 'other') expect([...commercialIn(body), ...pricesIn(body)], url).toEqual([]);
});

it('asks whoever is not signed in to sign in, and leads back', async () => {
  const page = await openPage({ path: '/range' });
  await page.waitForURL(/\/sign-in\?to=%2Frange/);
  await page.goto('/');
  await page.waitForURL(/\/sign-in/);
});
