import { expect, it } from 'vitest';
import { idInAddress, openNewInquiry } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';

it('saves an inquiry on a phone, from the head of the form and from its end', async () => {
  const page = await openAs('engineer', { width: 390 });
  await openNewInquiry(page);
  const save = page.getByRole('button', { name: 'Save', exact: true });
  await step('ask for a title before anything is known to be open', async () => {
    await page.getByText('Give the inquiry a title, and what is still open is listed here.').waitFor();
  });
  await step('offer to save once something is typed, at both ends', async () => {
    expect(await save.count()).toBe(2);
    await page.getByLabel('Title').fill('Typed on a phone');
    for (const button of await save.all()) expect(await button.isEnabled()).toBe(true);
  });
  await step('say who will see it', async () => {
    const client = page.getByRole('combobox', { name: 'Client' });
    await client.fill('kelmoor polymers');
    await page.getByText('People of Kelmoor Polymers will see it').waitFor();
    await client.fill('Kelmoor Polymer');
    await page.getByText('New client; nobody outside sees it yet').waitFor();
  });
  await step('say how a speed is read', async () => {
    await page.getByRole('group', { name: 'Stirring speed' }).getByLabel('highest').fill('600 rpm');
    await page.getByText(/^read as 600.*1\/min$/).waitFor();
  });
  await step('save it from the end of the form', async () => {
    await save.last().click();
    await page.waitForURL(/\/inquiries\/(?!new)[\w-]+$/);
    expect(idInAddress(page, 'inquiries')).not.toBe('new');
  });
});
