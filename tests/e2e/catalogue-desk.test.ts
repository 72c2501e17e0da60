import { readFileSync } from 'node:fs';
import type { Item } from '@flangewise/model';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Locator, Page } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { type Api, apiOf, readInquiry, saveJob } from './api.js';
import { openAs } from './page.js';
import { clients } from './people.js';
import { step } from './step.js';
import { plain } from './text.js';

const { items } = pricedDemoCatalogue;
const shield = items.find(({ slot }) => slot === 'shield') as Extract<Item, { slot: 'shield' }>;

const sheet = (page: Page, name: string): Locator =>
  page.getByRole('navigation', { name: 'Sheets of this revision' }).getByRole('link', { name });

const openSheet = async (page: Page, name: string): Promise<void> => {
  await sheet(page, name).click();
  await page.locator(`a[aria-current="page"]`, { hasText: name }).waitFor();
};

const openItem = async (page: Page, id: string): Promise<Locator> => {
  await page.getByLabel('Number, name or value').fill(id);
  await page.getByRole('row').filter({ hasText: id }).getByRole('button').click();
  return page.getByRole('dialog');
};

const giveFile = (page: Page, name: string, text: string): Promise<void> =>
  page.getByLabel('choose a file').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

const release = async (page: Page, why: string): Promise<void> => {
  await openSheet(page, 'Changes');
  await page.getByText('Nothing hinders the release').waitFor();
  await page.getByLabel('Why this revision is made').fill(why);
  await page.getByRole('button', { name: 'Put it in force' }).click();
  await page.getByText(/\d+ in force$/).waitFor();
};

/** Puts a catalogue in force that says of these items what the shipped one says, for the tests that come after. */
async function putBack(keeper: Api, ids: readonly string[]): Promise<void> {
  const { revision } = await keeper.catalogue.openDraft.mutate({});
  const document = {
    ...pricedDemoCatalogue,
    items: items.filter(({ id }) => ids.includes(id)),
    priceLists: [],
  };
  const { applied, version } = await keeper.catalogue.importFile.mutate({
    draftId: revision.id,
    version: revision.version,
    format: 'json',
    contentBase64: Buffer.from(JSON.stringify(document)).toString('base64'),
    apply: true,
  });
  expect(applied).toBe(true);
  await keeper.catalogue.release.mutate({ id: revision.id, version, note: 'As it was shipped' });
}

it('takes the keeper from a draft to the range that everybody works with', async () => {
  const engineer = await openAs('engineer');
  const api = await apiOf(engineer);
  const job = await saveJob(api, { ...readInquiry('01-hydrogenation'), client: clients.sundrey });
  const { id: offerId } = await api.offers.create.mutate({ systemId: job.systemId, date: '2026-11-24' });
  const offered = (await api.offers.get.query({ id: offerId })).offer;
  const bought = offered.positions[0]?.item ?? '';
  const { revision: before } = await api.catalogue.get.query();

  const page = await openAs('keeper');
  const keeper = await apiOf(page);
  onTestFinished(() => putBack(keeper, [shield.id, bought]));
  await step('open a draft', async () => {
    await page.getByRole('button', { name: 'Open a draft' }).click();
    await page.waitForURL(/\/range\/revisions\/[\w-]+$/);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByText(/^\d+ draft$/).waitFor();
  });
  await step('refuse a value that cannot be, while it is typed', async () => {
    const dialog = await openItem(page, shield.id);
    await dialog.getByRole('button', { name: 'Change it' }).click();
    const form = page.getByRole('form', { name: `Fields of ${shield.id}` });
    await form.getByLabel('Mass, kg').fill('heavy');
    await form.getByText('it is no number; give a number in kg, at least 0').waitFor();
    await form.getByLabel('Mass, kg').fill('14.25');
    await form.getByLabel('Max height, mm').fill('36 in');
    await form.getByRole('button', { name: 'Save in the draft' }).click();
    await page.getByText(`${shield.id} is saved in the draft.`).waitFor();
  });
  await step('show the item as changed, in the units of the trade', async () => {
    const dialog = page.getByRole('dialog');
    await dialog.getByText('14.25').waitFor();
    const text = plain(await dialog.innerText());
    expect(text).toContain('14.25 kg');
    expect(text).toContain('914.4 mm');
    await dialog.getByRole('button', { name: 'Close' }).click();
  });
  await step('change nothing by a file with one trouble', async () => {
    await openSheet(page, 'Files');
    await giveFile(page, 'broken.csv', `number,lead time [d]\r\n${shield.id},77\r\n${bought},soon\r\n`);
    const alert = page.getByRole('alert').filter({ hasText: 'in the way of broken.csv' });
    await alert.waitFor();
    expect(plain(await alert.innerText())).toMatch(
      /3\s+lead time \[d\]\s+soon\s+it is no number; give a whole number/i,
    );
    expect(await page.getByRole('button', { name: 'Put it into the draft' }).count()).toBe(0);
  });
  await step('show what a good file would do, and do it when told to', async () => {
    await giveFile(page, 'good.csv', `number,lead time [d]\r\n${bought},177\r\n`);
    await page.getByText('1 changed').waitFor();
    expect(plain(await page.getByRole('listitem').filter({ hasText: bought }).innerText())).toMatch(/177 d/);
    await page.getByRole('button', { name: 'Put it into the draft' }).click();
    await page.getByText('It is in the draft now.').waitFor();
  });
  await step('tell the difference, and the offer that it touches', async () => {
    await openSheet(page, 'Changes');
    await page.getByText('2 items changed').waitFor();
    await page
      .getByRole('link', { name: `Offer ${(await api.offers.get.query({ id: offerId })).number}` })
      .waitFor();
    const line = page.getByRole('listitem').filter({ hasText: shield.id }).first();
    expect(plain(await line.innerText())).toContain('14.25 kg');
  });
  await step('put it in force', () => release(page, 'Shield measured again; longer delivery of one part'));
  await step('show it to the engineer, while the offer keeps its revision', async () => {
    const { revision, items: now } = await api.catalogue.get.query();
    expect(revision).not.toBe(before);
    expect(now.find(({ id }) => id === shield.id)).toMatchObject({ massKg: 14.25, maxHeightM: 0.9144 });
    await engineer.goto(`/range#${shield.id}`);
    await engineer.getByRole('dialog').getByText('14.25').waitFor();
    expect((await api.offers.get.query({ id: offerId })).offer.catalogueRevision).toBe(before);
  });
  await step('save the revision as a file that comes back', async () => {
    await openSheet(page, 'Files');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'CSV table' }).click(),
    ]);
    const text = readFileSync(await download.path(), 'utf8');
    expect(text.split('\r\n')).toHaveLength(items.length + 2);
    expect(text).toContain(shield.id);
  });
});

it('lets others look and not change', async () => {
  const page = await openAs('sales');
  await page.goto('/range/revisions');
  await page.getByRole('table', { name: 'Revisions of the range' }).getByRole('link').first().click();
  await page.getByRole('navigation', { name: 'Sheets of this revision' }).waitFor();
  expect(await page.getByRole('button', { name: 'Open a draft' }).count()).toBe(0);
  await openSheet(page, 'Files');
  expect(await page.getByLabel('choose a file').count()).toBe(0);
});

it('keeps fields and tables of an item within a phone', async () => {
  const page = await openAs('keeper', { width: 390 });
  const keeper = await apiOf(page);
  const { revision } = await keeper.catalogue.openDraft.mutate({});
  onTestFinished(async () => {
    await keeper.catalogue.discardDraft.mutate({ id: revision.id, version: revision.version });
  });
  await page.goto(`/range/revisions/${revision.id}#CV-1001`);
  const tooWide = (): Promise<number> =>
    page
      .getByRole('dialog')
      .last()
      .evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
  await page.getByRole('button', { name: 'Change it' }).waitFor();
  expect(await tooWide()).toBe(0);
  await page.getByRole('button', { name: 'Change it' }).click();
  await page.getByRole('form').waitFor();
  expect(await tooWide()).toBe(0);
});
