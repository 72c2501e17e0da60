import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { apiOf, inquiryFile } from './api.js';
import { importButton, openNewInquiry } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';
import { plain } from './text.js';

const file = (name: string, content: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(content),
});

/** What is said about the field with a label. */
const saidAt = async (page: Page, label: string): Promise<string> => {
  const field = page.getByLabel(label).first();
  await page
    .getByRole('textbox', { name: label })
    .and(page.locator('[aria-invalid="true"]'))
    .first()
    .waitFor();
  const id = (await field.getAttribute('aria-describedby')) ?? '';
  return plain(await page.locator(`[id="${id}"]`).innerText());
};

it('refuses what cannot be an inquiry, says why, and keeps what was typed', async () => {
  const page = await openAs('engineer');
  await openNewInquiry(page);
  const title = page.getByLabel('Title', { exact: true });
  await title.fill('Typed before');
  await page.getByLabel('Liquid in the vessel').fill('1.5 L');
  const typedStays = async (): Promise<void> => {
    expect(await title.inputValue()).toBe('Typed before');
    expect(await page.getByLabel('Liquid in the vessel').inputValue()).toBe('1.5 L');
  };

  await step('refuse a file that is not JSON', async () => {
    await importButton(page).setInputFiles(file('scan.json', '%PDF-1.7 not an inquiry'));
    const said = page.getByRole('alert').filter({ hasText: '“scan.json” is not JSON' });
    await said.waitFor();
    expect(await said.innerText()).toContain('Allowed is one inquiry as a JSON file');
    await typedStays();
  });
  await step('refuse JSON that is no inquiry', async () => {
    await importButton(page).setInputFiles(file('list.json', '[1, 2]'));
    await page.getByRole('alert').filter({ hasText: '“list.json” holds no inquiry' }).waitFor();
    await typedStays();
  });
  await step('name the field of a file that is in a wrong unit, with the units allowed', async () => {
    const inquiry = JSON.parse(readFileSync(inquiryFile('01-hydrogenation'), 'utf8')) as object;
    const wrong = { ...inquiry, sets: [{ batchVolume: '1.5 kg' }] };
    const other = page.getByLabel('or volume of the vessel');
    await other.fill('3 L');
    await importButton(page).setInputFiles(file('kg.json', JSON.stringify(wrong)));
    await page.getByText('The fields below show the file').waitFor();
    expect(await page.getByLabel('Liquid in the vessel').inputValue()).toBe('1.5 kg');
    expect(await other.inputValue(), 'a field of which the file says nothing').toBe('');
    const said = await saidAt(page, 'Liquid in the vessel');
    expect(said).toMatch(/kg/);
    expect(said).toMatch(/\bL\b/);
    await page.getByRole('alert').filter({ hasText: 'One field cannot be used' }).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await other.inputValue()).toBe('3 L');
    await other.fill('');
    await typedStays();
  });
  await step('refuse a negative volume', async () => {
    await page.getByLabel('Liquid in the vessel').fill('-1.5 L');
    await page.getByRole('button', { name: 'Find systems' }).first().click();
    const said = await saidAt(page, 'Liquid in the vessel');
    expect(said).toContain('-1.5 L');
    expect(said).toMatch(/0|above|positive|greater/);
    expect(new URL(page.url()).pathname).toBe('/inquiries/new');
    await page.getByLabel('Liquid in the vessel').fill('1.5 L');
  });
  await step('say what a half-filled form lacks', async () => {
    await title.fill('');
    await page.getByRole('button', { name: 'Find systems' }).first().click();
    expect(await saidAt(page, 'Title')).toContain('The inquiry needs a title of 1 to 200 characters');
    await page.getByRole('button', { name: 'Add a medium' }).click();
    await title.fill('Typed before');
    await page.getByRole('button', { name: 'Find systems' }).first().click();
    expect(await saidAt(page, 'Substance')).toContain('Name the substance');
    await typedStays();
  });
  await step('bring back after a reload what was typed', async () => {
    await page.reload();
    await page.getByText('Typed and kept on this computer').waitFor();
    await typedStays();
    expect(await (await apiOf(page)).inquiries.list.query()).not.toContainEqual(
      expect.objectContaining({ title: 'Typed before' }),
    );
  });
});
